#!/usr/bin/env bash
# Builds the program twice, in two folders, and compares every byte. Usage: src/test/sh/twice.sh [profiles]
# Not compared: the class-data archive and the file that says what it fits, which no archive holds.
set -euo pipefail
cd "$(dirname "$0")/../../.."
profiles=${1:-}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
for place in one "another one"; do
  mkdir "$work/$place"
  git ls-files -z --cached --others --exclude-standard | tar --null -T - -c | tar -x -C "$work/$place"
  (cd "$work/$place" && mvn -B -ntp -q ${profiles:+"-P$profiles"} -DskipTests package)
  (cd "$work/$place/target" && shopt -s nullglob &&
    find pourwright pourwright-*.zip pourwright-*.tar.gz -type f ! -name 'pourwright.jsa*' -print0 |
    LC_ALL=C sort -z | xargs -0 sha256sum) >"$work/$place.sums"
  # Other bytes could hide behind the same second.
  sleep 2
done
if diff "$work/one.sums" "$work/another one.sums"; then
  echo "the same bytes twice: $(wc -l <"$work/one.sums") files"
  grep -E '\.(zip|tar\.gz)$' "$work/one.sums" || true
else
  echo "the two builds differ" >&2
  exit 1
fi
