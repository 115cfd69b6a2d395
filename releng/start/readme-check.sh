#!/bin/sh
# Runs the commands of the README as a stranger types them, and holds the outputs it shows to what they print.
# usage: readme-check.sh ROOT [--renew]   (--renew writes the real outputs into the README)
set -eu
root=$1
renew=${2:-}
cd "$root"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

./mouldwright estimate examples/rain-canopy/canopy.plug >"$work/canopy.txt"
[ -s "$work/canopy.txt" ] || { echo "readme-check: the estimate of the canopy printed nothing" >&2; exit 1; }

# The picture of the README is the beginning of that output.
head -n 63 "$work/canopy.txt" | awk '
	{ gsub(/&/, "\\&amp;"); gsub(/</, "\\&lt;"); gsub(/>/, "\\&gt;"); line[NR] = $0; width[NR] = length($0) * 8 }
	END {
		height = NR * 17 + 28
		printf "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 840 %d\" width=\"840\" height=\"%d\" role=\"img\" aria-label=\"Build plan as printed by mouldwright estimate\">\n", height, height
		printf "<rect width=\"840\" height=\"%d\" rx=\"6\" fill=\"#fbfaf7\" stroke=\"#d8d4c8\"/>\n", height
		print "<g font-family=\"DejaVu Sans Mono, Menlo, Consolas, monospace\" font-size=\"13\" fill=\"#23241f\" xml:space=\"preserve\">"
		for (i = 1; i <= NR; i++)
			if (width[i])
				printf "<text x=\"12\" y=\"%d\" textLength=\"%d\" lengthAdjust=\"spacingAndGlyphs\">%s</text>\n", 8 + 17 * i, width[i], line[i]
		print "</g>\n</svg>" }' >"$work/estimate.svg"
picture=examples/rain-canopy/estimate.svg
if [ "$renew" = --renew ]; then
	cat "$work/estimate.svg" >"$picture"
elif ! cmp -s "$picture" "$work/estimate.svg"; then
	echo "readme-check: $picture shows something else than the estimate of the canopy; renew it with: sh releng/start/readme-check.sh . --renew" >&2
	exit 1
fi

# So are its drawings.
./mouldwright draw examples/rain-canopy/canopy.plug --out "$work/drawn" >"$work/output"
for pair in lines:RainCanopy-lines section:RainCanopy-section-S4; do
	picture=examples/rain-canopy/${pair%%:*}.svg
	drawn=$work/drawn/${pair#*:}.svg
	if [ "$renew" = --renew ]; then
		cat "$drawn" >"$picture"
	elif ! cmp -s "$picture" "$drawn"; then
		echo "readme-check: $picture shows something else than draw writes; renew it with: sh releng/start/readme-check.sh . --renew" >&2
		exit 1
	fi
done

./mouldwright sheets examples/rain-canopy/canopy.plug --format svg --out "$work/sheets" >"$work/output"
picture=examples/rain-canopy/sheet.svg
drawn=$(ls "$work"/sheets/RainCanopy-BirchPly12-sheet-2-of-*.svg)
if [ "$renew" = --renew ]; then
	cat "$drawn" >"$picture"
elif ! cmp -s "$picture" "$drawn"; then
	echo "readme-check: $picture shows something else than sheets writes; renew it with: sh releng/start/readme-check.sh . --renew" >&2
	exit 1
fi

for file in README.md DEVELOPERS.md; do
	sed -n 's/^<!-- output of \.\/\(.*\) -->$/\1/p' "$file" >"$work/commands"
	cp "$file" "$work/new"
	while read -r command; do
		# shellcheck disable=SC2086
		sh ./$command >"$work/output"
		awk -v marker="<!-- output of ./$command -->" -v output="$work/output" '
			skip && /^```$/ { skip = 0 }
			!skip { print }
			$0 == marker { armed = 1 }
			armed && /^```$/ { armed = 0; skip = 1; while ((getline line < output) > 0) print line }' "$work/new" >"$work/next"
		mv "$work/next" "$work/new"
	done <"$work/commands"
	if [ "$renew" = --renew ]; then
		cat "$work/new" >"$file"
	elif ! diff -u "$file" "$work/new" >"$work/diff"; then
		cat "$work/diff" >&2
		echo "readme-check: $file shows something else than the commands print; renew it with: sh releng/start/readme-check.sh . --renew" >&2
		exit 1
	fi
done

# The spec shown is the spec that was run.
awk '/^`examples\/ten-lines\/hatch.plug` is a whole spec/ { near = 1 } near && /^```$/ { if (on) exit; on = 1; next } on { print }' README.md >"$work/shown"
diff -u examples/ten-lines/hatch.plug "$work/shown" >&2 || { echo "readme-check: README.md shows another spec than examples/ten-lines/hatch.plug" >&2; exit 1; }

# Wrong usage and wrong specs end with the exit codes of the README.
expect() {
	want=$1
	shift
	code=0
	"$@" >"$work/out" 2>"$work/err" || code=$?
	[ "$code" = "$want" ] || { cat "$work/err" >&2; echo "readme-check: exit code $code, $want expected: $*" >&2; exit 1; }
	if grep -q '^	at ' "$work/err"; then cat "$work/err" >&2; echo "readme-check: a stack trace: $*" >&2; exit 1; fi
}
printf 'plug P { day 7 kg }\n' >"$work/wrong.plug"
expect 0 ./mouldwright check examples/rain-canopy/canopy.plug examples/nacelle-cowl/cowl.plug
expect 1 ./mouldwright check "$work/wrong.plug"
expect 2 ./mouldwright estimate examples/stock/foam.plug
expect 3 ./mouldwright check "$work/not-there.plug"
expect 3 ./mouldwright check "$work"
