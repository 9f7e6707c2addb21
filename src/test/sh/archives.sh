#!/usr/bin/env bash
# Unpacks each archive of target/ and holds it against the program that was built. After: mvn -Pdist,linux-x64 package
set -euo pipefail
cd "$(dirname "$0")/../../.."
root=$PWD
built=$root/target/pourwright
work=$(mktemp -d)
trap 'chmod -R u+w "$work"; rm -rf "$work"' EXIT
wrong() { echo "$archive: $*" >&2; exit 1; }
# Advice to stop is advice: only 2 and above are faults here.
advice() { "$@" || [ $? -eq 1 ]; }

found=0
for archive in target/pourwright-*.zip target/pourwright-*.tar.gz; do
  [ -f "$archive" ] || continue
  found=$((found + 1))
  place="$work/a folder $found"
  mkdir "$place"
  case $archive in
    *.zip) unzip -q "$archive" -d "$place" ;;
    *) tar -xzf "$archive" -C "$place" ;;
  esac
  app=$(echo "$place"/pourwright-*)
  run=$app/bin/pourwright

  # 1. It says and advises what the built program does, also where nothing may be written and from another folder.
  chmod -R a-w "$app"
  cd "$place"
  [ "$("$run" --version)" = "$("$built/bin/pourwright" --version)" ] || wrong "--version differs"
  for words in "plan --answers $root/src/main/app/training.json --json" \
    "diagnose --answers $root/src/main/app/training-diagnosis.json --json" \
    "figure pump-down-time chamber-volume=20 pump-speed=1 target-pressure=30" "now foam" "rules" "questions" \
    "kit lid-state=cracked --no-input" "vents undercut-width=8mm undercut-depth=20mm undercut-blind=yes --no-input"; do
    # shellcheck disable=SC2086 # the words are meant to part
    advice "$run" $words </dev/null >"$work/unpacked" 2>&1 || wrong "$words: $(head -3 "$work/unpacked")"
    # shellcheck disable=SC2086
    advice "$built/bin/pourwright" $words </dev/null >"$work/built" 2>&1
    cmp "$work/unpacked" "$work/built" || wrong "$words differs"
  done
  chmod -R u+w "$app"
  cd "$root"

  # 2. One with its own Java needs no other, and holds every module that its libraries name.
  if [ -d "$app/runtime" ]; then
    env -i PATH=/nowhere /bin/sh "$run" now foam >"$work/unpacked"
    grep -q 'bleed valve' "$work/unpacked" || wrong "does not run without another Java"
    has=$("$app/runtime/bin/java" --list-modules | sed 's/@.*//')
    wants=$(jdeps --ignore-missing-deps --multi-release 17 --print-module-deps --class-path "$app/lib/*" "$app"/lib/*.jar |
      tail -1 | tr , ' ')
    for module in $wants; do
      grep -qx "$module" <<<"$has" || wrong "the runtime lacks $module"
    done
    [ -s "$app/runtime/legal/java.base/LICENSE" ] || [ -s "$app/runtime/legal/java.base/copyright" ] ||
      wrong "no licence of the runtime"
    echo "$archive: runtime $(du -sm "$app/runtime" | cut -f1) MiB"
  fi

  # 3. Every library has its licence here, and stands in the bill of materials with version and licence.
  for jar in "$app"/lib/*.jar; do
    name=$(basename "$jar" .jar)
    [ "$name" = pourwright ] && continue
    id=${name%-[0-9]*}
    version=${name#"$id-"}
    if ! ls "$app/licences/$name-jar/META-INF/"LICENSE* >/dev/null 2>&1; then
      text=$(awk -v id="$id" '$1 == id { print $3 }' "$app/licences/index.txt")
      [ -n "$text" ] && [ -s "$app/licences/$text" ] || wrong "no licence of $name"
    fi
    printf '%s %s\n' "$id" "$version"
  done | sort >"$work/libraries"
  python3 - "$app/sbom.cdx.json" "$work/libraries" "$app/licences/index.txt" <<'P' || wrong "bill of materials"
import json, sys
bom = json.load(open(sys.argv[1]))
wanted = {tuple(line.split()) for line in open(sys.argv[2])}
index = {w[0]: w[1] for w in (line.split() for line in open(sys.argv[3])) if w[0] != "#"}
listed = {(c["name"], c["version"]): c for c in bom["components"]}
if set(listed) != wanted:
    sys.exit(f"only listed: {set(listed) - wanted}; only in lib: {wanted - set(listed)}")
for (name, version), c in listed.items():
    ids = [x.get("expression") or x["license"].get("id") for x in c.get("licenses", [])]
    if not ids or None in ids:
        sys.exit(f"{name} has no SPDX id: {c.get('licenses')}")
    if name in index and index[name] not in ids:
        sys.exit(f"{name}: the list says {ids}, the index {index[name]}")
P
  echo "$archive: $(wc -l <"$work/libraries") libraries, $(du -m "$archive" | cut -f1) MiB packed, $(du -sm "$app" | cut -f1) MiB unpacked"

  # 4. Quickened, it says the same; moved after that, still.
  "$app/bin/quicken" >/dev/null
  [ -s "$app/lib/pourwright.jsa" ] || wrong "not quickened"
  "$run" now foam >"$work/quick"
  mv "$app" "$place/moved"
  "$place/moved/bin/pourwright" now foam >"$work/moved"
  "$built/bin/pourwright" now foam >"$work/built"
  cmp "$work/quick" "$work/built" && cmp "$work/moved" "$work/built" || wrong "quickened or moved, it differs"

  # 5. Nothing is connected, bound or sent, where the system can tell. The C library itself asks for its name service cache.
  if command -v strace >/dev/null; then
    strace -f -qq -e trace=connect,bind,listen,sendto,sendmsg -o "$work/calls" "$place/moved/bin/pourwright" now foam >/dev/null
    if grep -E 'connect|bind|listen|send' "$work/calls" | grep -v '/var/run/nscd/socket'; then wrong "it uses a socket"; fi
  fi
done
[ "$found" -gt 0 ] || { echo "no archive in target/: mvn -Pdist,linux-x64 package" >&2; exit 1; }
echo "archives: $found, all as they should be"
