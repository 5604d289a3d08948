#!/bin/sh
# Makes the files of version 2 beside it. Until that version is released they are made anew when words or numbers
# change; from then on they are frozen.
#   make.sh JAR [FOLDER]        from the project's folder, with zip, unzip and gzip
set -eu
jar=$(realpath "$1")
out=$(realpath "${2:-src/test/resources/caryatid/frozen/v2}")
samples=sample-recordings
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p "$out/results" "$out/reports" "$out/records" "$out/packed"
rm -f "$out"/results/* "$out"/reports/* "$out"/records/* "$out"/packed/*
caryatid() { java -Djava.awt.headless=true -Duser.timezone=UTC -jar "$jar" "$@"; }

# --- Results and reports
k7="$samples/k7/barefoot-1.csv $samples/k7/barefoot-2.csv $samples/k7/barefoot-3.csv
  --trial $samples/k7/barefoot.yaml --plate $samples/k7/plate.yaml"
m4="$samples/m4/shoe.txt --trial $samples/m4/shoe.yaml --plate $samples/m4/plates.yaml"
caryatid check $k7 --json | gzip -9n >"$out/results/k7-barefoot.json.gz"
caryatid check $m4 --json | gzip -9n >"$out/results/m4-shoe.json.gz"
caryatid check $k7 --out "$work/k7" >/dev/null
caryatid check $m4 --language de --out "$work/m4" >/dev/null
mv "$work"/k7/*.pdf "$out/reports/k7-barefoot.pdf"
mv "$work"/m4/*.pdf "$out/reports/m4-shoe-de.pdf"

# --- A record with every kind of entry; a stand of M4 in a shoe, at a quarter of the rate
awk 'NR <= 6 || NR % 4 == 3' "$samples/m4/shoe.txt" | sed 's/^Rate\t100 Hz/Rate\t25 Hz/' >"$work/stand.txt"
sed -e 's/^at: .*/at: 2026-03-05T09:00+01:00/' \
  -e "s/^as-meant: \[/as-meant: ['beyond limit: demo knee, up to 75 kg, allowed 70 kg', /" \
  "$samples/m4/shoe.yaml" >"$work/sheet.yaml"
records="$work/records"
add() { # TIME KIND KEY=VALUE...
  at=$1 kind=$2
  shift 2
  caryatid record add M4-left "$kind" --records "$records" --by AB --at "2026-03-05T$at+01:00" "$@" >/dev/null
}
caryatid record start M4-left --records "$records" --by AB --at 2026-03-05T08:00+01:00 \
  wearer=M4 side=left level=transfemoral body-mass-kg=75 mobility-grade=3 note=invented >/dev/null
add 08:10 before-any-screw contractures=none skin=clear minutes-since-donning=20
add 08:20 components 'components[1].what=knee' 'components[1].name=demo knee' 'components[1].body-mass-highest-kg=70'
add 08:30 bench-alignment 'items[1].item=1' 'items[1].set=3.5' 'items[1].recommended=5' 'items[1].source=invented' \
  'items[2].item=own item' 'items[2].set=1' 'items[2].unit=mm'
add 08:40 length 'landmarks[1].landmark=iliac crest' 'landmarks[1].left-mm=1009' 'landmarks[1].right-mm=1003'
caryatid check "$work/stand.txt" --trial "$work/sheet.yaml" --plate "$samples/m4/plates.yaml" \
  --out "$work/report" --record M4-left --records "$records" >/dev/null
add 10:00 walking 'observations[1].deviation=1' 'observations[1].severity=slight' comfort=6
add 10:10 footwear 'shoes[1].shoe=street shoe' 'shoes[1].heel-height-mm=20' 'shoes[1].stand=6'
add 10:20 accepted what=offset 'why=walks well' stand=6
add 10:30 own-setting what=ankle attempts=3 succeeded=2 heel-height-wanted-mm=15 heel-height-set-mm=14
add 10:40 note text=steady
add 11:00 length 'landmarks[1].landmark=iliac crest' 'landmarks[1].left-mm=1003' 'landmarks[1].right-mm=1009' \
  --corrects 5 --because swapped
caryatid record pack M4-left "$out/packed/M4-left.zip" --records "$records" >/dev/null
find "$records" -exec touch -d 2026-03-05T12:00Z {} +
(cd "$work" && find records -type f ! -name '*.lock' | LC_ALL=C sort | TZ=UTC zip -q -9 -X -D "$out/records/M4-left.zip" -@)
