#!/bin/sh
# Waits until a Job has ended, well (status 0) or not (status 1): sh kubernetes-wait.sh NAME [SECONDS]. See README.md beside it.
# `kubectl wait` waits for one condition alone, and would wait on for `complete` where the Job has failed.
set -eu
job=${1:?the name of the Job}
ends=$(($(date +%s) + ${2:-7200}))
while :; do
	conditions=$(kubectl get job "$job" -o 'jsonpath={range .status.conditions[?(@.status=="True")]}{.type}{"\n"}{end}')
	case "$conditions" in
	*Complete*) exit 0 ;;
	*Failed*)
		echo "the Job $job has failed: kubectl describe job $job" >&2
		exit 1
		;;
	esac
	if [ "$(date +%s)" -ge "$ends" ]; then
		echo "the Job $job has not ended in time" >&2
		exit 2
	fi
	sleep "${SLACKWATER_WAIT:-5}"
done
