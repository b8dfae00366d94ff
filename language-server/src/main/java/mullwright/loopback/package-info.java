/** What every page served on this machine needs before it may be served: a secret, and headers. */
package mullwright.loopback;
