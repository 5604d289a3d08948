/** Paints drawings on any canvas, and draws strips with JFreeChart. */
package caryatid.chart.paint;
