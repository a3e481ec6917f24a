/** Charts of the crafts as PDF. */
package saddlebar.report.chart;
