# The work of queues.mjs in SimPy, in its callback form: events without processes. Prints processor seconds and a result.
import random
import sys
import time
from collections import deque

import simpy


def mm1(customers):
    env = simpy.Environment()
    draw = random.Random(1).expovariate
    line = deque()
    state = {"busy": False, "arrived": 0, "waits": 0.0}

    def after(delay, action):
        env.timeout(delay).callbacks.append(action)

    def begin(since):
        state["busy"] = True
        state["waits"] += env.now - since
        after(0.9 * draw(1), leave)

    def arrive(_):
        state["arrived"] += 1
        if state["arrived"] < customers:
            after(draw(1), arrive)
        if state["busy"]:
            line.append(env.now)
        else:
            begin(env.now)

    def leave(_):
        state["busy"] = False
        if line:
            begin(line.popleft())

    began = time.process_time()
    after(draw(1), arrive)
    env.run()
    return time.process_time() - began, state["waits"] / customers


def hold(pending, holds):
    env = simpy.Environment()
    draw = random.Random(1).expovariate
    left = [holds]

    def again(_):
        if left[0] > 0:
            left[0] -= 1
            env.timeout(draw(1)).callbacks.append(again)

    for _ in range(pending):
        env.timeout(draw(1)).callbacks.append(again)
    began = time.process_time()
    while left[0] > 0:
        env.step()
    return time.process_time() - began, env.now


sizes = [int(size) for size in sys.argv[2:]]
print("%.9f %.17g" % (mm1(*sizes) if sys.argv[1] == "mm1" else hold(*sizes)))
