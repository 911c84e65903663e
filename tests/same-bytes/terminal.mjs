// Loaded before the program (`--import`): standard input and output pass for a terminal of COLUMNS columns, though they are pipes.
// Standard error does not, since a bar of progress is there or not as the machine is busy.
const columns = Number(process.env.COLUMNS);
Object.assign(process.stdout, { isTTY: true, columns });
process.stdin.isTTY = true;
