/** How much paint a layer takes, mixed, fired, bought. */
package saddlebar.materials.paint;
