#!/bin/bash
# One shard of a ward's run: sbatch --array=1-N slurm-array.sh. See README.md beside it.
#SBATCH --job-name=slackwater
#SBATCH --ntasks=1
set -euo pipefail
: "${SLACKWATER_WARD:?the scenario file of the ward}"
: "${SLACKWATER_PARTS:?the folder for the parts, seen by all nodes}"
# Not SLURM_ARRAY_TASK_COUNT: an array of the one index that failed would count 1.
: "${SLACKWATER_SHARDS:?how many shards make up the whole}"
rules=()
if [ -n "${SLACKWATER_RULES:-}" ]; then rules=(--rules "$SLACKWATER_RULES"); fi
# Words of the command, split on purpose: "node dist/cli/main.js" is two.
${SLACKWATER:-slackwater} supply "$SLACKWATER_WARD" \
	--shard "$SLURM_ARRAY_TASK_ID/$SLACKWATER_SHARDS" \
	--workers "${SLURM_CPUS_PER_TASK:-1}" \
	"${rules[@]}" \
	--out "$SLACKWATER_PARTS" --quiet
