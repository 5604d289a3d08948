/** Paints drawings on any canvas; draws what has axes with JFreeChart. */
package caryatid.chart.paint;
