/** Which stencils a layer becomes: pure geometry over painted pieces. */
package saddlebar.production.plan;
