"""Runs a command in a terminal of the given width and hands on what it shows: COLUMNS COMMAND..."""

import fcntl
import os
import pty
import struct
import sys
import termios

columns, command = int(sys.argv[1]), sys.argv[2:]
pid, screen = pty.fork()
if pid == 0:
    fcntl.ioctl(1, termios.TIOCSWINSZ, struct.pack("HHHH", 40, columns, 0, 0))
    os.execvp(command[0], command)
while True:
    try:
        shown = os.read(screen, 65536)
    except OSError:  # the command has left the terminal
        break
    if not shown:
        break
    os.write(1, shown)
sys.exit(os.waitstatus_to_exitcode(os.waitpid(pid, 0)[1]))
