/**
 * From results to drawings: first planned as plain data in millimetres on paper, then painted by
 * JFreeChart on any canvas. May use the packages of results and {@code wording}.
 */
package caryatid.chart;
