package saddlebar.model.store;

import org.w3c.dom.Document;

/**
 * Brings a model file from one format version to the next. A changed format is a new step; steps are never edited once a release has
 * written their older version, and a sample of each version stays among the tests.
 */
public interface FormatStep {
    /** The version it reads; it leaves the next one. */
    int from();

    /** Changes the document in place; the version attribute is set by the caller. */
    void apply(Document document);
}
