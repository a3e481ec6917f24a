/**
 * Documents for client and studio, in sections that bundles contribute: a proposal, the workshop's cards, the dossier. A {@link
 * saddlebar.report.document.ReportSection} writes plain HTML through a {@link saddlebar.report.document.Leaf}; {@link saddlebar.report.document.ReportPdf}
 * sets it as PDF/A, the same HTML goes out by mail. Facts come in as the model and as values ({@link saddlebar.report.document.ReportMatter}).
 */
package saddlebar.report.document;
