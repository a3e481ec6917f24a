/** . */
package saddlebar.artwork;
