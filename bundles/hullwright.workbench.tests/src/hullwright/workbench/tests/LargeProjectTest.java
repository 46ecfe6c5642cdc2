/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.documents.scene.Shape;
import hullwright.workbench.boat.NetworkView;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Collectors;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

/**
 * A project with 5,000 devices, 100 networks of 50, opens, is drawn, checked and typed into. A watchdog looks how long the UI thread
 * lets others wait meanwhile; what it saw is written to {@code target/ui-thread.txt} and not asserted, since machines differ.
 */
class LargeProjectTest {

	private static final int SERIES = 100;
	private static final int BLOCKS = 13;

	/** One series with 50 devices on 13 blocks. */
	private static String series(int number) {
		StringBuilder text = new StringBuilder("import \"standard:parts\"\n\nseries Many" + number + " \"For tests\" revision \"A\" {\n\tplaces { helm \"Helm\" }\n"
				+ "\tsupply battery { 12 V, lowest 11.0 V, highest 14.6 V; fuse 3 A; lead 2 m each way of 1.5 mm2 }\n"
				+ "\tnetwork instruments of kind instrument bus {\n\t\tbackbone of light {\n\t\t\tterminator left : endFemale at helm\n"
				+ "\t\t\ttap feed : midTap at helm from battery earths shield\n");
		for (int block = 0; block < BLOCKS; block++) {
			text.append("\t\t\tcable 2 m\n\t\t\ttee block").append(block).append(" : block4 at helm\n");
		}
		text.append("\t\t\tterminator right : endMale at helm\n\t\t}\n");
		for (int device = 0; device < 50; device++) {
			text.append("\t\tdrop block").append(device / 4).append('.').append(device % 4 + 1).append(" via 2 m of light to device").append(device)
					.append(" : rudderSensor at helm\n");
		}
		return text.append("\t}\n\thull 1\n}\n").toString();
	}

	@Test
	void fiveThousandDevicesAreOpenedDrawnCheckedAndTypedInto() throws Exception {
		Map<String, String> texts = new TreeMap<>(Map.of("yard.hull", Bench.PROFILE));
		for (int number = 0; number < SERIES; number++) {
			texts.put("series" + number + ".hull", series(number));
		}
		// what the platform loads for the first editor of a run is not what is looked at here
		try (Bench first = Bench.open("first", Map.of("yard.hull", Bench.PROFILE, "dinghy.hull", SmallBoat.TEXT), "dinghy.hull")) {
			Window.ui(() -> Window.page().showView(NetworkView.ID));
			Window.until("the small boat is drawn", () -> ((NetworkView) Window.page().findView(NetworkView.ID)).canvas().scene(), Optional::isPresent);
			Window.ui(() -> {
				Window.page().activate(first.editor());
				return null;
			});
		}
		Watchdog watchdog = new Watchdog();
		watchdog.start();
		try (Bench bench = Bench.open("many", texts, "series7.hull")) {
			NetworkView view = (NetworkView) Window.ui(() -> Window.page().showView(NetworkView.ID));
			Window.ui(() -> {
				Window.page().activate(bench.editor());
				return null;
			});
			Window.until("all 50 devices of the file in the editor are drawn", () -> view.canvas().scene().stream().flatMap(scene -> scene.things().stream())
					.map(Shape.Thing::element).filter(element -> element.startsWith("Many7.instruments.device")).distinct().count(), drawn -> drawn == 50L);
			bench.type("terminator right : endMale at helm", "");
			Window.until("the open end is marked while the text is not saved", bench::annotations,
					found -> found.stream().anyMatch(text -> text.startsWith("cabling/terminator-missing: ")));
			bench.type("tee block12 : block4 at helm\n", "tee block12 : block4 at helm\n\t\t\tterminator right : endMale at helm\n");
			Window.until("and no longer once it is closed", bench::annotations, found -> found.stream().noneMatch(text -> text.startsWith("cabling/terminator-missing: ")));
		} finally {
			watchdog.end();
		}
		List<Long> waits = watchdog.waits();
		assertTrue(waits.size() > 100, "the watchdog looked");
		Files.writeString(Path.of("target/ui-thread.txt"), String.format(Locale.ROOT, "5,000 devices: the UI thread was asked %d times; longest wait %d ms, "
				+ "%d waits over 100 ms%n%n%s", waits.size(), waits.get(waits.size() - 1), waits.stream().filter(wait -> wait > 100).count(), watchdog.busyWith()));
	}

	/**
	 * Asks the UI thread every few milliseconds to do nothing, and notes how long it takes to get round to it. While it is late, another
	 * thread looks what it is busy with.
	 */
	private static final class Watchdog extends Thread {

		private static final int PAUSE_MILLIS = 10;
		private static final int LATE_NANOS = 60_000_000;
		private static final int DEEP = 45;

		private final List<Long> waits = new CopyOnWriteArrayList<>();
		private final Map<Long, List<String>> busy = new ConcurrentSkipListMap<>();
		private volatile long asked;
		private volatile boolean ended;

		Watchdog() {
			super("UI watchdog");
			setDaemon(true);
		}

		@Override
		public void run() {
			Display display = PlatformUI.getWorkbench().getDisplay();
			Thread looker = new Thread(() -> look(display.getThread()), "UI watchdog's look");
			looker.setDaemon(true);
			looker.start();
			while (!ended) {
				asked = System.nanoTime();
				long since = asked;
				display.syncExec(() -> waits.add((System.nanoTime() - since) / 1_000_000));
				asked = 0;
				try {
					Thread.sleep(PAUSE_MILLIS);
				} catch (InterruptedException e) {
					return;
				}
			}
		}

		private void look(Thread ui) {
			while (!ended) {
				long since = asked;
				if (since != 0 && System.nanoTime() - since > LATE_NANOS) {
					busy.computeIfAbsent(since, late -> new CopyOnWriteArrayList<>()).add(Arrays.stream(ui.getStackTrace()).limit(DEEP).map(StackTraceElement::toString)
							.collect(Collectors.joining("\n    ")));
				}
				try {
					Thread.sleep(PAUSE_MILLIS);
				} catch (InterruptedException e) {
					return;
				}
			}
		}

		/** What the UI thread was seen to do while it was late, look by look. */
		String busyWith() {
			return busy.values().stream().map(looks -> looks.size() + " looks:\n  " + String.join("\n\n  ", looks)).collect(Collectors.joining("\n\n"));
		}

		void end() {
			ended = true;
		}

		List<Long> waits() {
			return waits.stream().sorted().toList();
		}
	}
}
