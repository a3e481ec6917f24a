/** . */
package saddlebar.nesting;
