#!/bin/sh
# How long the command line takes from a cold start, beside a JVM that prints one line: median of ten runs each, in milliseconds.
# Usage: releng/start/cold-start.sh [FILE]
set -eu
root=$(CDPATH= cd -- "$(dirname -- "$0")/../.." && pwd)
. "$root/releng/start/common.sh"
need_jdk
build_if_stale
file=${1:-$root/examples/rain-canopy/canopy.plug}
runs=10

folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
printf 'public class OneLine { public static void main(String[] a) { System.out.println("one line"); } }\n' >"$folder/OneLine.java"
"$JAVA_HOME/bin/javac" -d "$folder" "$folder/OneLine.java"

# Prints the median and the least wall time of a command, and its median processor time, which tells more on a busy machine. Exit
# code 1 says that a spec has errors, not that the command failed.
measure() {
	name=$1
	shift
	for run in $(seq "$runs"); do
		from=$(date +%s%N)
		cpu=$( ({ "$@" >/dev/null 2>&1 || [ $? = 1 ]; } && times) | awk 'NR == 2 { for (i = 1; i <= 2; i++) { split($i, t, /[ms]/); s += 60 * t[1] + t[2] }; printf "%d", 1000 * s }')
		[ -n "$cpu" ] || stop "$name failed"
		echo "$((($(date +%s%N) - from) / 1000000)) $cpu"
	done >"$folder/times"
	printf '%-10s %6d ms median, %6d ms least, %6d ms processor time\n' "$name" "$(middle 1)" "$(cut -d' ' -f1 "$folder/times" | sort -n | head -n 1)" "$(middle 2)"
}

# The median of a column.
middle() {
	cut -d' ' -f"$1" "$folder/times" | sort -n | awk '{ t[NR] = $1 } END { print (t[int((NR + 1) / 2)] + t[int(NR / 2) + 1]) / 2 }' | cut -d. -f1
}

measure "one line" "$JAVA_HOME/bin/java" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -cp "$folder" OneLine
measure "help" "$root/mouldwright" --help
measure "check" "$root/mouldwright" check "$file"
measure "estimate" "$root/mouldwright" estimate "$file"
