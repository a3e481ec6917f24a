/** Artwork as values that the crafts hand each other: lines in mm, gray in bands of device rows. */
package saddlebar.model.art;
