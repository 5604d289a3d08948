/** Classes that the architecture's rules are tried on; nothing uses them. */
package caryatid.impure;
