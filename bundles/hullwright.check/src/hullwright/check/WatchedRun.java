/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * Checks a series on a thread of its own and watches the clock: a rule that takes too long for one boat is named, its thread
 * is left behind, and the series is checked again without the rule. Java cannot stop a thread that does not want to; the one
 * left behind is a daemon, so that it does not keep the process alive.
 */
final class WatchedRun {

	private static final long GLANCE_MILLIS = 50;

	private final RuleGuard guard;
	private final Duration limit;

	/** @param limit how long a rule may take for one boat */
	WatchedRun(RuleGuard guard, Duration limit) {
		this.guard = guard;
		this.limit = limit;
	}

	/**
	 * Runs a check to its end, anew whenever a rule has been given up.
	 *
	 * @param fresh makes the check; it is asked again after each rule that was given up
	 * @param progress told now and then how many boats of the series are done
	 * @throws CancellationException if the check is called off
	 */
	SeriesCheck run(Supplier<SeriesCheck> fresh, IntConsumer progress) {
		while (true) {
			SeriesCheck check = fresh.get();
			FutureTask<SeriesCheck> task = new FutureTask<>(() -> {
				check.run();
				return check;
			});
			Thread worker = new Thread(task, "check of a series");
			worker.setDaemon(true);
			worker.start();
			Optional<SeriesCheck> done = await(task, check, progress);
			if (done.isPresent()) {
				return done.get();
			}
		}
	}

	private Optional<SeriesCheck> await(FutureTask<SeriesCheck> task, SeriesCheck check, IntConsumer progress) {
		while (true) {
			try {
				return Optional.of(task.get(GLANCE_MILLIS, TimeUnit.MILLISECONDS));
			} catch (TimeoutException e) {
				progress.accept(check.checked());
				Optional<String> overdue = check.ruleRunningLongerThan(limit);
				if (overdue.isPresent()) {
					guard.fail(overdue.get(), "it took longer than " + limit.toSeconds() + " s for one boat");
					check.abandon();
					return Optional.empty();
				}
			} catch (InterruptedException e) {
				check.abandon();
				Thread.currentThread().interrupt();
				throw new CancellationException();
			} catch (ExecutionException e) {
				if (e.getCause() instanceof RuntimeException failure) {
					throw failure;
				}
				throw new IllegalStateException(e.getCause());
			}
		}
	}
}
