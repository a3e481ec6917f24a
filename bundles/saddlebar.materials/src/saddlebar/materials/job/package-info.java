/** What is to be made, as values read from the commission. */
package saddlebar.materials.job;
