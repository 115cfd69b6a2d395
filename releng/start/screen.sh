#!/bin/sh
# Runs a command on a screen that nobody sees: sh releng/start/screen.sh COMMAND ...
set -eu
root=$(CDPATH= cd -- "$(dirname -- "$0")/../.." && pwd)
. "$root/releng/start/common.sh"

need_tools
need_window_libraries
open_screen
"$@"
