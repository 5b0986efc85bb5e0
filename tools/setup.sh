# Sourced by ./croftboard and ./verify: finds a JDK 17+ and Maven 3.8+, installs them by apt where it may.
# Sets JAVA, JAVA_HOME_FOUND and MVN. Speaks only to stderr.

version_of() { # the major version of a java program, 0 when it cannot run
  "$1" -version 2>&1 | sed -n 's/.*version "\([0-9]*\).*/\1/p' | head -n 1
}

find_java() { # sets JAVA to a java of 17 or newer; with "compiler" its folder must hold javac too
  JAVA=
  for candidate in "${JAVA_HOME:+$JAVA_HOME/bin/java}" "$(command -v java 2>/dev/null)" \
      /usr/lib/jvm/*/bin/java /Library/Java/JavaVirtualMachines/*/Contents/Home/bin/java; do
    [ -n "$candidate" ] && [ -x "$candidate" ] || continue
    found=$(version_of "$candidate")
    [ "${found:-0}" -ge 17 ] || continue
    if [ "${1:-}" = compiler ]; then
      real=$(readlink -f "$candidate" 2>/dev/null || echo "$candidate")
      [ -x "$(dirname "$real")/javac" ] || continue
      candidate=$real
    fi
    JAVA=$candidate
    return 0
  done
  return 1
}

apt_install() { # installs the packages named when this user may; says what to do when not
  if command -v apt-get >/dev/null 2>&1; then
    if [ "$(id -u)" = 0 ]; then may=; elif sudo -n true 2>/dev/null; then may="sudo -n"; else may=no; fi
    if [ "$may" != no ]; then
      echo "croftboard: installing $* (once)" >&2
      if { $may apt-get update -qq && DEBIAN_FRONTEND=noninteractive $may apt-get install -y -qq "$@"; } >&2; then
        return 0
      fi
    fi
  fi
  echo "croftboard: please install a JDK 17 or newer and Maven 3.8 or newer (Debian, Ubuntu: apt-get install $*)" >&2
  return 1
}

need_build_tools() { # JAVA with javac, and MVN
  find_java compiler || { apt_install openjdk-17-jdk-headless maven && find_java compiler; } || return 1
  MVN=$(command -v mvn 2>/dev/null)
  if [ -z "$MVN" ]; then
    apt_install maven || return 1
    MVN=$(command -v mvn) || return 1
  fi
  JAVA_HOME=$(dirname "$(dirname "$(readlink -f "$JAVA" 2>/dev/null || echo "$JAVA")")")
  export JAVA_HOME
}
