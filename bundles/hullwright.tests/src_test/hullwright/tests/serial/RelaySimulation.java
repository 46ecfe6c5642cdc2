/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * Lines into a device and one out of it, character by character. Each sentence goes on when it is whole, in the order of arrival.
 */
final class RelaySimulation {

	/** A line that sends one character in so many ticks, each sentence to its end. */
	private static final class Line {
		private final int ticks;
		private final Deque<Sentence> queue = new ArrayDeque<>();
		private int sent;
		private int left;

		Line(int ticks) {
			this.ticks = ticks;
		}

		/** Goes on for a tick; gives the sentence of which a character has gone out with it. */
		Sentence tick() {
			if (queue.isEmpty()) {
				return null;
			}
			if (left == 0) {
				left = ticks;
			}
			if (--left > 0) {
				return null;
			}
			Sentence now = queue.element();
			if (++sent == now.length) {
				queue.remove();
				sent = 0;
			}
			return now;
		}

		boolean hasEnded() {
			return sent == 0;
		}
	}

	/** A sentence on its way; when it became due on the line out is known as soon as it has come. */
	private static final class Sentence {
		private final int input;
		private final int length;
		private final boolean passes;
		private int due;

		Sentence(int input, int length, boolean passes) {
			this.input = input;
			this.length = length;
			this.passes = passes;
		}
	}

	/**
	 * A sentence that becomes due again and again.
	 *
	 * @param input which line it comes by
	 * @param interval in ticks
	 * @param passes whether the device passes it on
	 */
	record Telling(int input, int length, int interval, boolean passes) {
	}

	/** The most characters that were held of each input, and of all. */
	final int[] held;
	int all;
	/** The most ticks from having come to having gone. */
	int took;

	/**
	 * Lets the lines run.
	 *
	 * @param ticks how many a character takes on each line in
	 * @param out how many on the line out
	 * @param first when each sentence becomes due first
	 */
	RelaySimulation(List<Telling> tellings, int[] ticks, int out, int[] first, int until) {
		held = new int[ticks.length];
		int[] now = new int[ticks.length];
		int[] next = first.clone();
		Line[] inputs = new Line[ticks.length];
		for (int i = 0; i < ticks.length; i++) {
			inputs[i] = new Line(ticks[i]);
		}
		Line output = new Line(out);
		int total = 0;
		for (int time = 0; time < until; time++) {
			for (int i = 0; i < next.length; i++) {
				if (next[i] == time) {
					Telling telling = tellings.get(i);
					inputs[telling.input()].queue.add(new Sentence(telling.input(), telling.length(), telling.passes()));
					next[i] += telling.interval();
				}
			}
			Sentence gone = output.tick();
			if (gone != null) {
				now[gone.input]--;
				total--;
				if (output.hasEnded()) {
					took = Math.max(took, time - gone.due);
				}
			}
			for (int i = 0; i < inputs.length; i++) {
				Sentence come = inputs[i].tick();
				if (come != null && come.passes) {
					held[i] = Math.max(held[i], ++now[i]);
					total++;
					if (inputs[i].hasEnded()) {
						come.due = time;
						output.queue.add(come);
					}
				}
			}
			all = Math.max(all, total);
		}
	}
}
