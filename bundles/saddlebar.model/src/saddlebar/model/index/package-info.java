/**
 * An index of the making record, so that a question about a million records is answered without reading them. It lies under {@code made/}, may be deleted
 * at any time, and is built again from the record files when it is absent, out of date or damaged. What a record speaks of is told to it by a
 * {@link saddlebar.model.index.RecordLens}; the index itself knows no craft.
 */
package saddlebar.model.index;
