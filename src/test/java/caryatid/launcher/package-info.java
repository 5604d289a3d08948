/**
 * The launcher, started as a person starts it, in folders made for it. A stand-in for Maven and for
 * the program keeps this quick; the real first build is run by {@code .ci/run}.
 */
package caryatid.launcher;
