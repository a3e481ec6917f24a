/** Beginning a commission: what a person chooses for it, asked for and checked field by field. */
package saddlebar.ui.begin;
