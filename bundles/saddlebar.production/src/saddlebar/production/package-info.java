/** . */
package saddlebar.production;
