/** What is to be drawn of a leg: its levels, its load line, and a strip for each target. */
package caryatid.chart.leg;
