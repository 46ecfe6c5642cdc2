/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.apache.log4j.Logger;
import org.apache.log4j.varia.NullAppender;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/**
 * The command line inside the product: the same program, started by the platform. Slower to start than on a plain class path,
 * but it needs nothing beside the product and has the product's plugins.
 */
public final class CommandLineApplication implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		context.applicationRunning();
		// The libraries have nothing to tell that a finding or the exit status does not tell better.
		Logger.getRootLogger().addAppender(new NullAppender());
		String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
		PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
		PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
		return Main.run(arguments, out, err, false);
	}

	@Override
	public void stop() {
		// A check ends by itself; until then there is nothing to put away.
	}
}
