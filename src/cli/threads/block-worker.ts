import { parentPort, workerData } from "node:worker_threads";
import { type Job, type JobKinds, workOn } from "../../studies/index.ts";

/** A thread of `deal`: is sent tasks of the job it was made for, sends back what they come to. */
const work = workOn(workerData as Extract<Job, { readonly kind: "study" }>); // deal sends a job and then tasks of its kind
parentPort?.on("message", (task: JobKinds["study"]["task"]) => {
	parentPort?.postMessage(work(task));
});
