/** The command line: arguments, streams, progress and exit status. */
package org.fieldfold.cli;
