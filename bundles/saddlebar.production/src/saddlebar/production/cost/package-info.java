/** What a commission costs, with what kiln and records know of it. */
package saddlebar.production.cost;
