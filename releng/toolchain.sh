# SPDX-FileCopyrightText: Hullwright contributors
# SPDX-License-Identifier: EPL-2.0
#
# Finds a JDK and Maven, and builds. Read by the scripts beside it, which set "root". POSIX shell.

MAVEN_VERSION=3.9.11

say() {
	printf 'hullwright: %s\n' "$*" >&2
}

give_up() {
	say "$*"
	exit 2
}

# The command that installs Debian packages, for a message.
apt_command() {
	if [ "$(id -u)" = 0 ]; then
		echo "apt-get install -y $*"
	else
		echo "sudo apt-get install -y $*"
	fi
}

# Sets "jdk_version" if a folder holds a JDK that fits.
fits() {
	jdk_version=
	[ -x "$1/bin/javac" ] && [ -x "$1/bin/java" ] && [ -r "$1/release" ] || return 1
	while IFS='=' read -r key value; do
		if [ "$key" = JAVA_VERSION ]; then
			jdk_version=${value#\"}
			jdk_version=${jdk_version%\"}
			break
		fi
	done <"$1/release"
	jdk_major=${jdk_version%%[.+-]*}
	case $jdk_major in '' | *[!0-9]*) return 1 ;; esac
	[ "$jdk_major" -ge 17 ]
}

# Sets "jdk" to the home of a JDK 17 or newer: JAVA_HOME, then PATH, then the usual places.
find_jdk() {
	if [ -n "${JAVA_HOME:-}" ] && fits "$JAVA_HOME"; then
		jdk=$JAVA_HOME
		return
	fi
	jdk=$(command -v javac) && jdk=$(readlink -f "$jdk" 2>/dev/null) && jdk=${jdk%/bin/javac} && fits "$jdk" && return
	for jdk in /usr/lib/jvm/default-java /usr/lib/jvm/*17* /usr/lib/jvm/* /Library/Java/JavaVirtualMachines/*/Contents/Home \
		"$HOME"/.sdkman/candidates/java/current /opt/homebrew/opt/openjdk*/libexec/openjdk.jdk/Contents/Home /opt/*jdk*; do
		fits "$jdk" && return
	done
	if [ -x /usr/libexec/java_home ]; then
		jdk=$(/usr/libexec/java_home -v 17+ 2>/dev/null) && fits "$jdk" && return
	fi
	give_up "a JDK 17 or newer is needed, and none was found in JAVA_HOME, in PATH or in the usual places. On Debian and Ubuntu: $(apt_command openjdk-17-jdk-headless)"
}

# Sets "maven" to the command of a Maven 3.9 or newer, which is fetched if there is only an older one.
find_maven() {
	JAVA_HOME=$jdk
	export JAVA_HOME
	maven=$root/releng/target/maven/apache-maven-$MAVEN_VERSION/bin/mvn
	[ -x "$maven" ] && return
	older=$(command -v mvn) ||
		give_up "Maven is needed, and there is no mvn in PATH. On Debian and Ubuntu: $(apt_command maven)"
	version=$("$older" --version 2>/dev/null | sed -n 's/.*Apache Maven \([0-9][0-9.]*\).*/\1/p')
	major=${version%%.*}
	minor=${version#*.}
	minor=${minor%%.*}
	if [ "${major:-0}" -eq 3 ] && [ "${minor:-0}" -ge 9 ]; then
		maven=$older
		return
	fi
	say "fetching Maven $MAVEN_VERSION; the one that is installed is ${version:-of an unknown version}"
	mkdir -p "$root/releng/target/maven"
	# An older Maven does not read MAVEN_ARGS, and word splitting is wanted.
	# shellcheck disable=SC2086
	"$older" -q -B -f "$root/releng/maven/pom.xml" ${MAVEN_ARGS:-} \
		org.apache.maven.plugins:maven-dependency-plugin:3.6.1:unpack \
		-Dartifact="org.apache.maven:apache-maven:$MAVEN_VERSION:zip:bin" \
		-DoutputDirectory="$root/releng/target/maven" >"$root/releng/target/maven/fetch.log" 2>&1 || {
		tail -n 15 "$root/releng/target/maven/fetch.log" >&2
		give_up "Maven $MAVEN_VERSION could not be fetched; see $root/releng/target/maven/fetch.log"
	}
	chmod +x "$maven"
}

# Lets one process at a time build in this tree. The lock names its owner; one whose owner is gone is taken over.
take_lock() {
	mkdir -p "$root/releng/target"
	lock=$root/releng/target/lock
	told=
	until ln -s "$$" "$lock" 2>/dev/null; do
		owner=$(readlink "$lock") || continue
		if ! kill -0 "$owner" 2>/dev/null; then
			# Only one of several waiting processes can move it away, and only if it is still the same.
			mv "$lock" "$lock.$owner.$$" 2>/dev/null || continue
			if [ "$(readlink "$lock.$owner.$$")" != "$owner" ]; then
				mv "$lock.$owner.$$" "$lock"
			else
				rm -f "$lock.$owner.$$"
			fi
			continue
		fi
		[ -n "$told" ] || say "waiting for the build of process $owner"
		told=yes
		sleep 1
	done
	trap drop_lock EXIT
	trap 'exit 130' INT
	trap 'exit 143' TERM HUP
}

drop_lock() {
	rm -f "$root/releng/target/lock"
	trap - EXIT INT TERM HUP
}

# Runs Maven in the root with the arguments after the first, which is the path of the log, and tells on standard error
# what is being built.
run_maven() {
	log=$1
	shift
	rm -f "$log.failed"
	{ (cd "$root" && "$maven" -B -ntp "$@") 2>&1 || : >"$log.failed"; } | {
		: >"$log"
		while IFS= read -r line; do
			printf '%s\n' "$line" >>"$log"
			case $line in
			"[INFO] Building "*" ["*/*"]")
				line=${line#"[INFO] Building "}
				step=${line##* }
				printf '  %s %s\n' "$step" "${line%% *}" >&2
				;;
			esac
		done
	}
	[ ! -e "$log.failed" ]
}

# What went wrong in a build: the first errors of its log, without Maven's advice on reading them.
show_errors() {
	say "the build failed; its log is $1"
	grep '^\[ERROR\]' "$1" | sed '/-> \[Help 1\]$/q' | cut -c1-300 | tail -n 20 >&2
	grep -q '^\[ERROR\]' "$1" || tail -n 20 "$1" >&2
}

# Compiled classes of sources that are gone would stay in the jars.
forget_classes() {
	rm -rf "$root"/bundles/*/target/classes "$root"/bundles/*/target/test-classes "$root"/releng/hullwright.*/target/classes
}

# One number for the content of all files below some folders of the root, without what a build makes.
content_of() {
	(cd "$root" && find "$@" \( -name target -o -name bin -o -name bin-test -o -name src-gen -o -name emf-gen -o -name .settings -o -name node_modules \) -prune \
		-o -type f -print | LC_ALL=C sort | tr '\n' '\0' | xargs -0 cksum | cksum)
}

# Whether what was built with a stamp is older than a file below some folders of the root: quick, and sure enough to say no.
changed_since() {
	stamp=$1
	shift
	[ -e "$stamp" ] || return 0
	[ -n "$(cd "$root" && find "$@" \( -name target -o -name bin -o -name bin-test -o -name src-gen -o -name emf-gen -o -name .settings -o -name node_modules \) -prune \
		-o -cnewer "$stamp" -print 2>&1 | head -n 1)" ]
}
