#!/bin/sh
# How long the command line takes from a cold start, beside a JVM that prints one line: median of twenty runs each,
# in milliseconds, and how many times the one line that is. The archive of classes is made first.
# Usage: releng/start/cold-start.sh [FILE]
set -eu
root=$(CDPATH= cd -- "$(dirname -- "$0")/../.." && pwd)
. "$root/releng/start/common.sh"
need_jdk
build_if_stale
file=${1:-$root/examples/rain-canopy/canopy.plug}
runs=20

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
	median=$(middle 1)
	[ -n "${line:-}" ] || line=$median
	printf '%-10s %6d ms median, %6d ms least, %6d ms processor time, %s times\n' "$name" "$median" "$(cut -d' ' -f1 "$folder/times" | sort -n | head -n 1)" "$(middle 2)" \
		"$(awk "BEGIN { printf \"%.1f\", $median / $line }")"
}

# The median of a column.
middle() {
	cut -d' ' -f"$1" "$folder/times" | sort -n | awk '{ t[NR] = $1 } END { print (t[int((NR + 1) / 2)] + t[int(NR / 2) + 1]) / 2 }' | cut -d. -f1
}

start_options check
[ -s "$archive" ] || make_archive >/dev/null 2>&1

measure "one line" "$JAVA_HOME/bin/java" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp "$folder" OneLine
measure "help" "$root/mouldwright" --help
measure "check" "$root/mouldwright" check "$file"
measure "estimate" "$root/mouldwright" estimate "$file"
