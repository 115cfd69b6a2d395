# Starts the workbench; sourced by ./mouldwright after common.sh.

# open_workbench [open FILE...]: without a file it shows the examples.
open_workbench() {
	[ "$(uname -s)" != Linux ] || [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ] || stop "the workbench needs a screen, and neither DISPLAY nor WAYLAND_DISPLAY is set. On the command line try: ./mouldwright --help"
	need_window_libraries
	use_product mouldwright.product mouldwright
	build_if_stale
	if [ $# -gt 1 ]; then
		shift
	else
		set -- "$root/examples/rain-canopy/canopy.plug"
	fi
	launcher=$(ls "$product"/plugins/org.eclipse.equinox.launcher_*.jar | head -n 1)
	options="-Xms64m -Xmx1g -XX:+UseSerialGC"
	[ "$(uname -s)" = Darwin ] && options="$options -XstartOnFirstThread"
	while :; do
		code=0
		# shellcheck disable=SC2086
		"$JAVA_HOME/bin/java" $options -jar "$launcher" ${MOULDWRIGHT_DATA:+-data "$MOULDWRIGHT_DATA"} -- "$@" || code=$?
		[ "$code" = 23 ] || exit "$code"
	done
}
