/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Set;
import java.util.Stack;
import java.util.TreeSet;
import java.util.regex.Pattern;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/**
 * The option {@code --fix}: alone it is about what leaves the boat as it is, with a rule about the design changes of that rule.
 */
final class FixOption {

	@Option(names = "--fix", paramLabel = "RULE", arity = "0..1", parameterConsumer = RuleIfOneFollows.class,
			description = "Mend what leaves the boat as it is, such as a missing unit; with the id of a rule, also the boat itself where that rule "
					+ "finds something and there is one way to mend it. May be given several times.")
	private Set<String> rules;

	/** Whether anything is to be mended. */
	boolean isGiven() {
		return rules != null;
	}

	/** The ids of the rules whose design changes are wanted. */
	Set<String> rules() {
		return rules;
	}

	/** Takes the next argument if it is the id of a rule; a path is left for others. */
	static final class RuleIfOneFollows implements IParameterConsumer {

		private static final Pattern RULE = Pattern.compile("[a-z]+/[a-z]+(-[a-z]+)*");

		@Override
		public void consumeParameters(Stack<String> arguments, ArgSpec argument, CommandSpec command) {
			Set<String> rules = argument.getValue() == null ? new TreeSet<>() : new TreeSet<>(argument.<Set<String>>getValue());
			if (!arguments.isEmpty() && RULE.matcher(arguments.peek()).matches() && !isPath(arguments.peek())) {
				rules.add(arguments.pop());
			}
			argument.setValue(rules);
		}

		private static boolean isPath(String argument) {
			try {
				return Files.exists(Path.of(argument));
			} catch (InvalidPathException e) {
				return false;
			}
		}
	}
}
