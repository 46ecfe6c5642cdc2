/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Random;

/**
 * A talker and its line, character by character. All times are in characters, so that the line sends one in each.
 */
final class LineSimulation {

	/**
	 * A sentence that becomes due again and again.
	 *
	 * @param length its characters
	 * @param interval how many characters the line sends meanwhile, at least if events tell it
	 */
	record Telling(int length, int interval, boolean regular) {
	}

	private static final class Waiting {
		private final int telling;
		private final int due;
		private int left;

		Waiting(int telling, int due, int left) {
			this.telling = telling;
			this.due = due;
			this.left = left;
		}
	}

	private final List<Telling> tellings;
	/** Of each sentence, the longest time until it began and until it was out. */
	final int[] waited;
	final int[] took;
	int backlog;
	int run;

	LineSimulation(List<Telling> tellings) {
		this.tellings = tellings;
		waited = new int[tellings.size()];
		took = new int[tellings.size()];
	}

	/**
	 * Lets the line run.
	 *
	 * @param first when each sentence becomes due first
	 * @param last the sentence that comes after all others that become due at the same moment; the others come in random order
	 * @param atOnce whether events tell their sentences as often as they may, not now and then
	 */
	void run(int[] first, int last, boolean atOnce, int until, Random random) {
		int[] next = first.clone();
		Deque<Waiting> queue = new ArrayDeque<>();
		int busy = 0;
		int waiting = 0;
		for (int time = 0; time < until; time++) {
			for (int each : noneDueAt(time, next) ? List.<Integer>of() : dueAt(time, next, last, random)) {
				Telling telling = tellings.get(each);
				queue.add(new Waiting(each, time, telling.length()));
				waiting += telling.length();
				next[each] = time + telling.interval() + (telling.regular() || atOnce ? 0 : random.nextInt(telling.interval()));
			}
			backlog = Math.max(backlog, waiting);
			if (queue.isEmpty()) {
				busy = 0;
				continue;
			}
			run = Math.max(run, ++busy);
			waiting--;
			Waiting now = queue.element();
			if (now.left == tellings.get(now.telling).length()) {
				waited[now.telling] = Math.max(waited[now.telling], time - now.due);
			}
			if (--now.left == 0) {
				took[now.telling] = Math.max(took[now.telling], time + 1 - now.due);
				queue.remove();
			}
		}
	}

	private static boolean noneDueAt(int time, int[] next) {
		for (int each : next) {
			if (each == time) {
				return false;
			}
		}
		return true;
	}

	private List<Integer> dueAt(int time, int[] next, int last, Random random) {
		List<Integer> due = new ArrayList<>();
		for (int i = 0; i < next.length; i++) {
			if (next[i] == time) {
				due.add(i);
			}
		}
		if (due.size() > 1) {
			Collections.shuffle(due, random);
			if (due.remove((Integer) last)) {
				due.add(last);
			}
		}
		return due;
	}
}
