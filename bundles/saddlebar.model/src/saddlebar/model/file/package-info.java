/** Files that are whole or absent, and their hashes. */
package saddlebar.model.file;
