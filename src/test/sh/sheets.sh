#!/usr/bin/env bash
# Draws the sheets of the recorded benches as the pictures of the README. It needs a Chromium; the tests do not.
set -euo pipefail
cd "$(dirname "$0")/../../.."
browser=$(command -v chromium || command -v chromium-browser || command -v google-chrome)
profile=$(mktemp -d)
trap 'rm -rf "$profile"' EXIT
for sheet in transcripts-of-cases/benches/*.sheet.html; do
    "$browser" --headless --no-sandbox --disable-gpu --hide-scrollbars --no-first-run --disable-background-networking \
        --user-data-dir="$profile" --window-size=800,1060 --screenshot="$PWD/${sheet%.html}.png" "file://$PWD/$sheet" \
        2> /dev/null
    echo "${sheet%.html}.png"
done
