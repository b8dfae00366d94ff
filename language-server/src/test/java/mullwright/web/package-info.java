/** Tests of the editor in a browser: who may come in, and what may be read and written. */
package mullwright.web;
