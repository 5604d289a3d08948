/** Drawings as plain data in millimetres on paper: marks, their look and the size of letters. */
package caryatid.chart.mark;
