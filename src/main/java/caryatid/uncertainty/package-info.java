/**
 * Values with named sources of uncertainty and their degrees of freedom; combining them and judging
 * conformity (JCGM 100:2008, JCGM 106:2012). Pure; uses the JDK, Commons Math and Commons
 * Statistics.
 */
package caryatid.uncertainty;
