#!/bin/bash
# A Slurm of one node in a folder of its own: one-node-slurm.sh start DIR | stop DIR.
# `start` makes a key, starts munged, slurmctld and slurmd, waits until the node is idle, and prints nothing; what went
# wrong is on standard error and in DIR. `stop` ends the three by their pid files. Nothing outside DIR is written.
set -euo pipefail
what=$1
dir=$2

stop() {
	for name in slurmd slurmctld munged; do
		local file="$dir/$name.pid"
		[ -s "$file" ] || continue
		local pid
		pid=$(cat "$file")
		kill "$pid" 2>/dev/null || true
		for _ in $(seq 50); do
			kill -0 "$pid" 2>/dev/null || break
			sleep 0.1
		done
		kill -9 "$pid" 2>/dev/null || true
	done
}

if [ "$what" = stop ]; then
	stop
	exit 0
fi

for program in munged slurmctld slurmd sbatch sinfo; do
	command -v "$program" >/dev/null || { echo "$program is not installed" >&2; exit 3; }
done
mkdir -p "$dir/state" "$dir/spool"
chmod 700 "$dir"
host=$(hostname -s)
me=$(id -un)
# Ports that depend on the folder, away from those of a Slurm that may run here already.
port=$((20000 + $(cksum <<<"$dir" | cut -d' ' -f1) % 20000))
head -c 1024 /dev/urandom >"$dir/munge.key"
chmod 600 "$dir/munge.key"
cat >"$dir/slurm.conf" <<CONF
ClusterName=one
SlurmctldHost=$host(127.0.0.1)
SlurmctldPort=$port
SlurmdPort=$((port + 1))
SlurmUser=$me
SlurmdUser=$me
AuthType=auth/munge
AuthInfo=socket=$dir/munge.socket
CredType=cred/munge
ProctrackType=proctrack/pgid
TaskPlugin=task/none
JobAcctGatherType=jobacct_gather/none
AccountingStorageType=accounting_storage/none
SelectType=select/cons_tres
SelectTypeParameters=CR_CPU
SlurmdParameters=config_overrides
ReturnToService=2
MailProg=$(command -v true)
StateSaveLocation=$dir/state
SlurmdSpoolDir=$dir/spool
SlurmctldPidFile=$dir/slurmctld.pid
SlurmdPidFile=$dir/slurmd.pid
SlurmctldLogFile=$dir/slurmctld.log
SlurmdLogFile=$dir/slurmd.log
NodeName=$host NodeAddr=127.0.0.1 CPUs=2 State=UNKNOWN
PartitionName=all Nodes=ALL Default=YES State=UP MaxTime=INFINITE
CONF
export SLURM_CONF="$dir/slurm.conf"
munged --force --key-file="$dir/munge.key" --socket="$dir/munge.socket" \
	--pid-file="$dir/munged.pid" --log-file="$dir/munged.log" --seed-file="$dir/munged.seed"
slurmctld -c
slurmd -c
for _ in $(seq 150); do
	if [ "$(sinfo -h -o %T 2>/dev/null)" = idle ]; then exit 0; fi
	sleep 0.2
done
echo "the node is not idle after 30 s: $(sinfo -h -o '%T %E' 2>&1)" >&2
tail -n 5 "$dir"/*.log >&2 || true
stop
exit 4
