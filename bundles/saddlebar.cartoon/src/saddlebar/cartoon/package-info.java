/** . */
package saddlebar.cartoon;
