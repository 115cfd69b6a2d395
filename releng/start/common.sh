# Shared by ./mouldwright and ./verify: finds a JDK and Maven, builds what is missing. POSIX shell; sourced with $root set.

maven_version=3.9.11
maven_home="${XDG_CACHE_HOME:-$HOME/.cache}/mouldwright/maven/apache-maven-$maven_version"

# What a product of releng is built as: use_product NAME UID.
use_product() {
	product="$root/releng/$1/target/products/$2/linux/gtk/x86_64"
	stamp="$root/releng/$1/target/built"
	built=$1
}
use_product mouldwright.cli.product mouldwright.commandline

say() { printf 'mouldwright: %s\n' "$*" >&2; }

stop() {
	say "$1"
	exit "${2:-3}"
}

# How the command line is started: quick to begin with, and from an archive of the classes it takes, which halves the time of a short
# command. The archive fits one JDK and one build, so it lies in the user's cache and is made beside the first command that misses it;
# a JVM that finds it does not fit goes on without. Sets options; needs JAVA_HOME and product.
start_options() {
	options="-XX:+UseSerialGC -Dguice_bytecode_gen_option=DISABLED"
	major=$(java_major "$JAVA_HOME")
	[ "$major" -ge 23 ] && options="$options --sun-misc-unsafe-memory-access=allow"
	quick="-XX:TieredStopAtLevel=1"
	archives="${XDG_CACHE_HOME:-$HOME/.cache}/mouldwright/start"
	name=$(printf '%s' "$product" | cksum | cut -d' ' -f1)
	archive="$archives/$name-$(ls -ln "$product/plugins" "$JAVA_HOME/release" 2>/dev/null | cksum | cut -d' ' -f1)"
	if [ -s "$archive" ]; then
		case $archive in *" "*) ;; *)
			if [ "$major" -ge 25 ]; then options="$options -Xlog:disable -XX:AOTCache=$archive"; else options="$options -Xlog:disable -XX:SharedArchiveFile=$archive"; fi ;;
		esac
	elif [ ! -e "$archive.cannot" ] && [ -z "${MOULDWRIGHT_NO_ARCHIVE:-}" ]; then
		(options="$options $quick" make_archive </dev/null >/dev/null 2>&1 &)
	fi
	# What runs for long earns the slower compiler that makes quicker code.
	[ "$1" = serve ] || options="$options $quick"
}

# Makes the archive of classes, one process at a time; those of earlier builds of the same product go.
make_archive() {
	mkdir -p "$archives" || return 0
	find "$archives" -maxdepth 1 -name '*.making' -mmin +10 -exec rm -rf {} + 2>/dev/null
	mkdir "$archive.making" 2>/dev/null || return 0
	making="-XX:ArchiveClassesAtExit"
	[ "$major" -ge 25 ] && making="-XX:AOTCacheOutput"
	# shellcheck disable=SC2086
	if nice "$JAVA_HOME/bin/java" $options "$making=$archive.making/archive" -cp "$product/plugins/*" mouldwright.cli.Rehearsal "$root/examples/rain-canopy/canopy.plug" &&
		[ -s "$archive.making/archive" ]; then
		find "$archives" -maxdepth 1 -type f -name "$name-*" -exec rm -f {} +
		mv "$archive.making/archive" "$archive"
	else
		: >"$archive.cannot"
	fi
	rm -rf "$archive.making"
}

# Major version of the Java in a folder; 0 if there is none with a compiler.
java_major() {
	[ -x "$1/bin/javac" ] && [ -r "$1/release" ] || { echo 0; return; }
	sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release" | head -n 1
}

# Sets JAVA_HOME to a JDK 21 or newer: the one it names, else the newest where systems keep theirs.
find_jdk() {
	best=0
	best_home=
	if [ -n "${JAVA_HOME:-}" ] && [ "$(java_major "$JAVA_HOME")" -ge 21 ] 2>/dev/null; then
		export JAVA_HOME
		return 0
	fi
	for home in /usr/lib/jvm/* /usr/java/* /opt/java/* /opt/jdk* /Library/Java/JavaVirtualMachines/*/Contents/Home "$HOME"/.sdkman/candidates/java/*; do
		major=$(java_major "$home")
		if [ "${major:-0}" -gt "$best" ] 2>/dev/null; then
			best=$major
			best_home=$home
		fi
	done
	[ "$best" -ge 21 ] || return 1
	JAVA_HOME=$best_home
	export JAVA_HOME
}

need_jdk() {
	find_jdk && return 0
	if can_install; then
		for package in openjdk-25-jdk-headless openjdk-21-jdk-headless; do
			install_packages "$package" && find_jdk && return 0
		done
	fi
	stop "no JDK 21 or newer was found. Install one (on Debian 13 and Ubuntu 24.04: apt-get install openjdk-21-jdk-headless; else any JDK build of version 21 or newer), or set JAVA_HOME to it, and try again."
}

can_install() { [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; }

# Installs Debian packages that the lists offer; fails quietly where they do not.
install_packages() {
	can_install || return 1
	if ! apt-cache show "$1" >/dev/null 2>&1; then
		say "asking for the package lists"
		apt-get update -qq >/dev/null 2>&1 || true
	fi
	apt-cache show "$1" >/dev/null 2>&1 || return 1
	say "installing $*"
	DEBIAN_FRONTEND=noninteractive apt-get install -y -qq "$@" >/dev/null 2>&1
}

# The programs of others that the tests hold our files to, each with the package it comes from on Debian.
need_tools() {
	missing=
	for pair in "pdftoppm poppler-utils" "rsvg-convert librsvg2-bin" "ogrinfo gdal-bin" "soffice libreoffice-calc-nogui" "nvim neovim" "Xvfb xvfb" "openbox openbox" "xdotool xdotool"; do
		command -v "${pair%% *}" >/dev/null 2>&1 || missing="$missing ${pair#* }"
	done
	/usr/bin/python3 -c 'import ezdxf' >/dev/null 2>&1 || missing="$missing python3-ezdxf"
	[ -z "$missing" ] && return 0
	# shellcheck disable=SC2086
	install_packages $missing || stop "the tests need these Debian packages:$missing. Install them and try again."
}

# The libraries of the system that a window is drawn with; newer systems have them under another name.
need_window_libraries() {
	[ "$(uname -s)" = Linux ] || return 0
	ldconfig -p 2>/dev/null | grep -q 'libgtk-3\.so' && return 0
	install_packages libgtk-3-0t64 || install_packages libgtk-3-0 || stop "the workbench needs GTK 3. Install it (on Debian: apt-get install libgtk-3-0) and try again."
}

# Opens a screen that nobody sees, with windows on it that can have the keyboard; sets DISPLAY. Closed when the script ends.
open_screen() {
	screen_folder=$(mktemp -d)
	trap 'kill $screen_server $screen_windows 2>/dev/null; rm -rf "$screen_folder"' EXIT
	trap 'exit 130' INT TERM
	screen_windows=
	mkfifo "$screen_folder/number"
	Xvfb -displayfd 3 -screen 0 1600x1000x24 -nolisten tcp 3>"$screen_folder/number" >/dev/null 2>&1 &
	screen_server=$!
	read -r number <"$screen_folder/number" || stop "Xvfb did not start"
	DISPLAY=:$number
	GDK_BACKEND=x11
	NO_AT_BRIDGE=1
	export DISPLAY GDK_BACKEND NO_AT_BRIDGE
	unset WAYLAND_DISPLAY
	openbox --sm-disable >/dev/null 2>&1 &
	screen_windows=$!
}

# Sets mvn to a Maven of the version the build wants, fetched by whatever Maven there is.
need_maven() {
	mvn="$maven_home/bin/mvn"
	[ -x "$mvn" ] && return 0
	if ! command -v mvn >/dev/null 2>&1; then
		can_install && install_packages maven || true
		command -v mvn >/dev/null 2>&1 || stop "no mvn was found. Install Apache Maven (apt-get install maven; any 3.x will do, it fetches $maven_version itself) and try again."
	fi
	say "fetching Maven $maven_version"
	mkdir -p "$maven_home"
	log=$(mktemp)
	(cd "$maven_home" && mvn -q -B org.apache.maven.plugins:maven-dependency-plugin:3.8.1:unpack "-Dartifact=org.apache.maven:apache-maven:$maven_version:zip:bin" \
		"-DoutputDirectory=$(dirname "$maven_home")") >"$log" 2>&1 || { grep ERROR "$log" | head -n 5 >&2; stop "Maven $maven_version could not be fetched; the whole log is $log"; }
	rm -f "$log"
	chmod +x "$mvn"
}

# Runs Maven with its output in a log, showing one line a module.
build() {
	log="$root/target/build.log"
	mkdir -p "$root/target"
	# What an earlier grammar or model gave may have no place in this one.
	rm -rf "$root/bundles/mouldwright.model/model-gen" "$root/bundles/mouldwright.language/src-gen"
	{ (cd "$root" && "$mvn" --batch-mode --no-transfer-progress "$@" 2>&1) && echo "[build] done" || echo "[build] failed"; } | tee "$log" | awk '
		/^\[INFO\] Building / && !/Building (jar|zip)/ { sub(/^\[INFO\] Building /, ""); sub(/ 0\.1\.0-SNAPSHOT.*/, ""); printf "mouldwright: building %s\n", $0 > "/dev/stderr"; fflush() }'
	if ! grep -qx '\[build\] done' "$log"; then
		grep -E 'ERROR|FAIL' "$log" | grep -v 'transfer' | head -n 25 >&2
		stop "the build failed; the whole log is target/build.log" 70
	fi
}

# Whether any source is newer than the last build.
is_stale() {
	[ -f "$stamp" ] && [ -d "$product/plugins" ] || return 0
	newer=$(find "$root/pom.xml" "$root/.mvn" "$root/bundles" "$root/releng" "$root/features" \
		\( -name target -o -name bin -o -name src-gen -o -name model-gen -o -name '*.tests' -o -name '*.benchmarks' -o -name '.polyglot*' -o -name '.tycho*' -o -name plugin.properties \) -prune -o -type f -newer "$stamp" -print 2>/dev/null | head -n 1)
	[ -n "$newer" ]
}

# Builds the product in use if it is missing or older than its sources; one build at a time.
build_if_stale() {
	is_stale || return 0
	need_maven
	mkdir -p "$root/target"
	if command -v flock >/dev/null 2>&1; then
		exec 9>"$root/target/lock"
		flock -n 9 || { say "another build is running; waiting for it"; flock 9; }
		is_stale || { exec 9>&-; return 0; }
	fi
	say "building $built (a minute or two the first time)"
	build package -DskipTests -pl "releng/$built" -am
	: >"$stamp"
	command -v flock >/dev/null 2>&1 && exec 9>&-
	return 0
}
