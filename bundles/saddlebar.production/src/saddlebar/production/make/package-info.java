/** From the plan of a commission to its files: the making pipeline. */
package saddlebar.production.make;
