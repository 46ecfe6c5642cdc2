/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.spec.Choice;
import hullwright.spec.Option;
import hullwright.spec.Series;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The options of a series and which of them can be ordered together.
 */
public final class OptionSpace {

	/** Combinations tried before the search is given up; reached only by hundreds of options that contradict each other. */
	private static final int MOST_STEPS = 1_000_000;

	private final List<String> options = new ArrayList<>();
	private final Map<String, Set<String>> requires = new HashMap<>();
	private final Map<String, Set<String>> excludes = new HashMap<>();
	private final List<Set<String>> choices = new ArrayList<>();

	OptionSpace(Series series) {
		series.getOptions().forEach(this::add);
		for (Choice choice : series.getChoices()) {
			choice.getOptions().forEach(this::add);
			choices.add(names(choice.getOptions()));
		}
		// excludes says the same read from either side
		excludes.forEach((option, others) -> others.forEach(other -> excludes.get(other).add(option)));
	}

	private void add(Option option) {
		if (!options.contains(option.getName())) {
			options.add(option.getName());
			requires.put(option.getName(), names(option.getRequires()));
			excludes.put(option.getName(), names(option.getExcludes()));
		}
	}

	private static Set<String> names(List<Option> options) {
		return options.stream().map(Option::getName).collect(Collectors.toCollection(TreeSet::new));
	}

	/** The names of all options, in the order of the text. */
	public List<String> options() {
		return List.copyOf(options);
	}

	/** The groups of options of which a boat has exactly one each. */
	List<Set<String>> choices() {
		return List.copyOf(choices);
	}

	/**
	 * The combinations that can be ordered.
	 *
	 * @param combinations the combinations, fewest options first where the text has them so
	 * @param more whether there are more than were asked for
	 */
	public record Orderable(List<SortedSet<String>> combinations, boolean more) {
	}

	/** The combinations that can be ordered, at most so many. */
	public Orderable orderable(int most) {
		List<SortedSet<String>> found = new ArrayList<>();
		int[] steps = { 0 };
		boolean all = search(0, new TreeSet<>(), most, found, steps);
		return new Orderable(List.copyOf(found), !all);
	}

	private boolean search(int next, TreeSet<String> ordered, int most, List<SortedSet<String>> found, int[] steps) {
		if (++steps[0] > MOST_STEPS) {
			return false;
		}
		if (next == options.size()) {
			if (whyNot(ordered).isEmpty()) {
				if (found.size() == most) {
					return false;
				}
				found.add(new TreeSet<>(ordered));
			}
			return true;
		}
		String option = options.get(next);
		if (!search(next + 1, ordered, most, found, steps)) {
			return false;
		}
		if (excludes.get(option).stream().anyMatch(ordered::contains) || secondOfItsChoice(option, ordered)) {
			return true;
		}
		ordered.add(option);
		boolean all = search(next + 1, ordered, most, found, steps);
		ordered.remove(option);
		return all;
	}

	private boolean secondOfItsChoice(String option, Set<String> ordered) {
		return choices.stream().anyMatch(choice -> choice.contains(option) && choice.stream().anyMatch(ordered::contains));
	}

	/** Why these options cannot be ordered together, in words, or empty if they can. */
	public Optional<String> whyNot(Set<String> ordered) {
		for (String option : ordered) {
			if (!options.contains(option)) {
				return Optional.of("there is no option '" + option + "'");
			}
			for (String required : requires.get(option)) {
				if (!ordered.contains(required)) {
					return Optional.of("option '" + option + "' requires '" + required + "'");
				}
			}
			for (String excluded : excludes.get(option)) {
				if (ordered.contains(excluded)) {
					return Optional.of("option '" + option + "' excludes '" + excluded + "'");
				}
			}
		}
		for (Set<String> choice : choices) {
			if (choice.stream().filter(ordered::contains).count() != 1) {
				return Optional.of("exactly one of " + String.join(", ", choice) + " must be ordered");
			}
		}
		return Optional.empty();
	}
}
