/**
 * From results to drawings, planned in millimetres on paper. Marks are in {@code chart.mark}; the
 * chart library is in {@code chart.paint}. May use the packages of results and {@code wording}.
 */
package caryatid.chart;
