/** Documents of the open commission: written in the background, looked at page by page. */
package saddlebar.ui.documents;
