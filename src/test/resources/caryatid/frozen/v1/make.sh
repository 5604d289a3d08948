#!/bin/sh
# Made the files beside it, once, with the jar of the commit that README.md names. It shows how; it is not to be
# run over them again: what a later version makes belongs in a folder of its own.
#   make.sh JAR NEW-FOLDER        from the project's folder, with zip and gzip
set -eu
jar=$(realpath "$1")
mkdir -p "$2"
out=$(cd "$2" && pwd)
samples=sample-recordings
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
caryatid() { java -Djava.awt.headless=true -Duser.timezone=UTC -jar "$jar" "$@"; }
trial() { # FOLDER SHEET PLATE RECORDING...: a check's arguments
  sheet=$samples/$1/$2.yaml plate=$samples/$3
  folder=$samples/$1
  shift 3
  for name; do printf '%s\n' "$folder/$name"; done
  printf '%s\n' --trial "$sheet" --plate "$plate"
}

# --- Results ---------------------------------------------------------------------------------------
mkdir -p "$out/results"
result() { # NAME and a trial
  name=$1
  shift
  caryatid check $(trial "$@") --json | gzip -9n >"$out/results/$name.json.gz"
}
result k7-barefoot k7 barefoot k7/plate.yaml barefoot-1.csv barefoot-2.csv barefoot-3.csv
result k7-shoe k7 shoe k7/plate-pressure.yaml shoe.csv
result m4-barefoot m4 barefoot m4/plates.yaml barefoot.txt
result m4-shoe m4 shoe m4/plates.yaml shoe.txt
result story-1 story stand-1 k7/plate.yaml stand-1.csv
result story-2 story stand-2 k7/plate.yaml stand-2a.csv stand-2b.csv stand-2c.csv
result story-3 story stand-3 k7/plate.yaml stand-3.csv
result story-walking-shoe story walking-shoe k7/plate.yaml walking-shoe.csv
result story-sports-shoe story sports-shoe k7/plate.yaml sports-shoe.csv

# --- Reports ---------------------------------------------------------------------------------------
mkdir -p "$out/reports"
report() { # NAME LANGUAGE and a trial
  name=$1 language=$2
  shift 2
  caryatid check $(trial "$@") --language "$language" --out "$work/$name" >/dev/null
  mv "$work/$name"/*.pdf "$out/reports/$name.pdf"
}
report k7-three-stands en k7 barefoot k7/plate.yaml barefoot-1.csv barefoot-2.csv barefoot-3.csv
report m4-de de m4 shoe m4/plates.yaml shoe.txt
report k7-based-on fr story stand-3 k7/plate.yaml stand-3.csv

# --- What forms and results were ---------------------------------------------------------------------
mkdir -p "$out/schemas"
cp docs/fitting-entry.schema.json docs/result.schema.json "$out/schemas"

# --- Records -----------------------------------------------------------------------------------------
mkdir -p "$out/records" "$out/packed"
# A stand of M4 in a shoe, at a quarter of the rate.
awk 'NR <= 6 || NR % 4 == 3' "$samples/m4/shoe.txt" | sed 's/^Rate\t100 Hz/Rate\t25 Hz/' >"$work/stand.txt"
sheet() { # LOCKED TIME: M4's sheet, by the locked knee or the free one
  sed -e "s/locked: no/locked: $1/" -e "s/^at: .*/at: $2/" -e '/^# /d' -e '1i # Invented wearer.' "$samples/m4/shoe.yaml"
}
language=
code=
add() { # TIME KIND KEY=VALUE...
  at=$1
  shift
  kind=$1
  shift
  caryatid record add "$code" "$kind" --language "$language" --records "$work/$language/records" --by AB \
    --at "2026-03-05T$at+01:00" "$@" >/dev/null
}
stand() { # LOCKED TIME
  sheet "$1" "2026-03-05T$2+01:00" >"$work/sheet.yaml"
  caryatid check "$work/stand.txt" --trial "$work/sheet.yaml" --plate "$samples/m4/plates.yaml" --language "$language" \
    --out "$work/$language/reports" --replace --record "$code" --records "$work/$language/records" >/dev/null
}
items() { # the usual items, chosen by their numbers
  i=1
  while [ "$i" -le 13 ]; do
    printf 'items[%s].item=%s items[%s].set=%s ' "$i" "$i" "$i" $((i + 2))
    i=$((i + 1))
  done
}
deviations() { # the usual deviations, chosen by their numbers
  i=1
  while [ "$i" -le 18 ]; do
    printf 'observations[%s].deviation=%s ' "$i" "$i"
    i=$((i + 1))
  done
}
record() { # LANGUAGE: every kind of entry, every usual item and deviation, words in that language
  language=$1
  code=M4-$1
  caryatid record start "$code" --language "$language" --records "$work/$language/records" --by AB \
    --at 2026-03-05T08:00+01:00 wearer=M4 side=left level=transfemoral body-mass-kg=75 mobility-grade=3 note=invented >/dev/null
  add 08:10 before-any-screw contractures=none socket-fit=full liner=silicone sock-ply=2 suspension=pin skin=clear \
    shoe=none minutes-since-donning=20 note=invented
  add 08:20 components 'components[1].what=knee' 'components[1].name=demo knee' 'components[1].serial=D-0002' \
    'components[1].body-mass-highest-kg=70' 'components[1].mobility-grade-lowest=1' 'components[1].mobility-grade-highest=4' \
    'components[1].source=invented' 'components[2].what=foot' 'components[2].name=demo foot' \
    'components[2].heel-height-lowest-mm=0' 'components[2].heel-height-highest-mm=15'
  add 08:30 bench-alignment $(items) 'items[14].item=own item' 'items[14].set=1' 'items[14].unit=mm' \
    'items[1].recommended=5' 'items[1].source=invented' note=invented
  add 08:40 length 'landmarks[1].landmark=iliac crest' 'landmarks[1].left-mm=1009' 'landmarks[1].right-mm=1003' \
    intended-shortening-mm=6 lift-mm=3 lift-under=left pelvis-level=no
  last=7
  case $language in en | de) stand no 09:00 && last=8 ;; esac
  add 09:30 bench-alignment 'items[1].item=1' 'items[1].set=7' 'items[2].item=5' 'items[2].set=12'
  stand yes 09:40
  add 10:00 walking $(deviations) 'observations[1].severity=slight' 'observations[19].deviation=own deviation' \
    'observations[19].plane=frontal' 'observations[19].phase=swing' comfort=6 skin=clear heel-stiffness=medium walking-aid=none
  add 10:10 footwear 'shoes[1].shoe=street shoe' 'shoes[1].heel-height-mm=20' "shoes[1].stand=$last" \
    'shoes[1].wearer-sets-ankle-alone=yes'
  add 10:20 accepted what=offset 'why=walks well' "stand=$last"
  add 10:30 own-setting what=ankle attempts=3 succeeded=2 heel-height-wanted-mm=15 heel-height-set-mm=15
  printf 'An invented file.\n' >"$work/kept.txt"
  add 10:40 note text=steady --keep "other=$work/kept.txt"
  add 11:00 length 'landmarks[1].landmark=iliac crest' 'landmarks[1].left-mm=1003' 'landmarks[1].right-mm=1009' \
    --corrects 5 --because swapped
}
zipped() { # NAME: a store as a zip, its records and nothing else
  find "$work/$1/records" -exec touch -d 2026-03-05T12:00Z {} +
  (cd "$work/$1" && find records | LC_ALL=C sort | TZ=UTC zip -q -9 -X -D "$out/records/$1.zip" -@)
}
for one in en de fr es; do
  record "$one"
  if [ "$one" = de ]; then
    # One that was erased.
    caryatid record start gone --language de --records "$work/de/records" --by AB --at 2026-03-05T08:00+01:00 \
      wearer=K8 side=right level=transtibial --sure >/dev/null
    caryatid record erase gone --language de --records "$work/de/records" --by CD --at 2026-03-06T08:00+01:00 \
      --because requested >/dev/null
  elif [ "$one" = es ]; then
    caryatid record pack M4-es "$out/packed/M4-es.zip" --records "$work/es/records" >/dev/null
  fi
  zipped "$one"
done

# One item in three spellings, and one deviation in four languages.
mkdir -p "$work/mixed"
mixed() { # LANGUAGE TIME KIND KEY=VALUE...
  language=$1 at=$2 kind=$3
  shift 3
  caryatid record add mixed-1 "$kind" --language "$language" --records "$work/mixed/records" --by AB \
    --at "2026-03-05T$at+01:00" "$@" >/dev/null
}
between() { # TIME MM RESULT: a stand written by hand
  mixed en "$1" stand footwear=barefoot heel-height-mm=0 'knee-mode=not locked, standing' body-mass-kg=75 body-mass-from=sheet \
    'findings[1].plane=sagittal' 'findings[1].side=left' 'findings[1].landmark=knee centre' "findings[1].offset-mm=$2" \
    'findings[1].expanded-mm=6.5' 'findings[1].recommended-mm=15' 'findings[1].below-mm=10' 'findings[1].above-mm=15' \
    "findings[1].result=$3" 'findings[1].source=invented'
}
caryatid record start mixed-1 --sure --records "$work/mixed/records" --by AB --at 2026-03-05T08:00+01:00 \
  wearer=M4 side=left level=transfemoral >/dev/null
mixed de 08:10 bench-alignment 'items[1].item=1' 'items[1].set=5'
between 08:20 -3.25 outside
mixed en 08:30 bench-alignment 'items[1].item=1' 'items[1].set=6'
mixed en 08:40 bench-alignment 'items[1].item=Socket flexion' 'items[1].set=7' 'items[1].unit=deg'
between 08:50 16.5 within
mixed de 09:00 walking 'observations[1].deviation=4'
mixed en 09:10 walking 'observations[1].deviation=4'
mixed fr 09:20 walking 'observations[1].deviation=4'
mixed es 09:30 walking 'observations[1].deviation=4'
mixed fr 09:40 bench-alignment 'items[1].item=12' 'items[1].set=900'
mixed es 09:50 bench-alignment 'items[1].item=altura' 'items[1].set=901' 'items[1].unit=mm'
zipped mixed
caryatid record pack mixed-1 "$out/packed/mixed-1.zip" --records "$work/mixed/records" >/dev/null
