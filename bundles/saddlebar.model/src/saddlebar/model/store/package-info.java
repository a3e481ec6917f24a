/**
 * Commissions and studios on disk: model files, records, locks, artwork. The only package that writes them. The formats stand in
 * docs/file-format.md.
 */
package saddlebar.model.store;
