#!/bin/sh
# Writes the invented certificates again: an authority, and two of localhost that it signed, one of
# which ran out in January 2020. The rest is valid for a hundred years from then.
set -eu
cd "$(dirname "$0")"
rm -f ./*.p12
k() { keytool -J-Duser.language=en "$@" -storetype PKCS12 -storepass invented -noprompt 2>/dev/null; }
start="2020/01/01 00:00:00"
made=$(mktemp -d)
k -genkeypair -alias authority -keyalg EC -dname "CN=invented authority" -ext bc:c -startdate "$start" -validity 36500 -keystore "$made/authority.p12"
k -exportcert -alias authority -keystore "$made/authority.p12" -file "$made/authority.pem" -rfc
k -importcert -alias authority -file "$made/authority.pem" -keystore authority.p12
signed() {
  name=$1; shift
  k -importcert -alias authority -file "$made/authority.pem" -keystore "$name.p12"
  k -genkeypair -alias demo -keyalg EC -dname "CN=invented" -keystore "$name.p12"
  k -certreq -alias demo -keystore "$name.p12" -file "$made/$name.req"
  k -gencert -alias authority -keystore "$made/authority.p12" -infile "$made/$name.req" -outfile "$made/$name.pem" -rfc -ext san=dns:localhost "$@"
  k -importcert -alias demo -file "$made/$name.pem" -keystore "$name.p12"
}
signed valid -startdate "$start" -validity 36500
signed expired -startdate "$start" -validity 30
rm -r "$made"
