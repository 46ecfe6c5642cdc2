/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.chart;

import hullwright.analysis.Figures;
import hullwright.analysis.data.CarrierTraffic;
import hullwright.analysis.data.DataFlow;
import hullwright.analysis.data.ReceivedData;
import hullwright.analysis.data.SeveralSources;
import hullwright.analysis.data.ShownData;
import hullwright.analysis.data.ToldMessage;
import hullwright.analysis.data.WantedData;
import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Ink;
import hullwright.documents.scene.LetterWidths;
import hullwright.documents.scene.Point;
import hullwright.documents.scene.Scene;
import hullwright.documents.scene.Shape;
import hullwright.documents.scene.Stroke;
import hullwright.network.data.MessageUse;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Who tells and who needs each kind of data: a row for each message, a column for each device, a sign where they meet. Gaps and
 * conflicts stand at the row, too, so that nobody has to search for them.
 */
public final class DataMatrix {

	private static final double MARGIN = 20;
	private static final double ROW = 24;
	private static final double COLUMN = 26;
	private static final double SIZE = 11;
	private static final double MOST_NAME = 330;

	/** What a device has to do with a message. */
	private enum Part {
		TELLS, GETS, SHOWS, LACKS
	}

	private final Figures figures;
	private final Map<String, Map<String, Set<Part>>> parts = new TreeMap<>();
	private final Map<String, String> titles = new LinkedHashMap<>();
	private final Map<String, List<String>> conflicts = new LinkedHashMap<>();
	private final List<String> devices = new ArrayList<>();
	private final List<Shape> shapes = new ArrayList<>();

	private DataMatrix(Figures figures) {
		this.figures = figures;
		DataFlow data = figures.data();
		data.carriers().forEach(this::tell);
		data.wants().forEach(this::want);
		data.shows().forEach(this::show);
		data.shared().stream().filter(SeveralSources::sameKey).forEach(this::conflict);
		Set<String> concerned = parts.values().stream().flatMap(row -> row.keySet().stream()).collect(Collectors.toCollection(TreeSet::new));
		figures.boat().fittedDevices().stream().map(device -> device.name()).filter(concerned::contains).distinct().forEach(devices::add);
	}

	/** The matrix of a boat. */
	public static Chart of(Figures figures) {
		return new DataMatrix(figures).chart();
	}

	private void tell(CarrierTraffic carrier) {
		for (ToldMessage told : carrier.messages()) {
			if (told.how() != ToldMessage.How.PASSED) {
				put(told.use(), told.teller(), Part.TELLS);
			}
		}
	}

	private void want(WantedData want) {
		for (ReceivedData received : want.received()) {
			put(received.use(), want.device(), Part.GETS);
		}
		if (!want.isMet()) {
			want.wanting().uses().forEach(use -> put(use, want.device(), Part.LACKS));
		}
	}

	private void show(ShownData show) {
		show.received().forEach(received -> put(received.use(), show.device(), Part.SHOWS));
	}

	private void put(MessageUse use, String device, Part part) {
		titles.put(use.toString(), use.message().title());
		parts.computeIfAbsent(use.toString(), none -> new LinkedHashMap<>()).computeIfAbsent(device, none -> EnumSet.noneOf(Part.class)).add(part);
	}

	private void conflict(SeveralSources several) {
		conflicts.computeIfAbsent(several.use().toString(), none -> new ArrayList<>()).add(several.devices().stream().map(Names::simple)
				.collect(Collectors.joining(" and ")) + " with the same instance" + several.instance().map(number -> " " + number).orElse(""));
	}

	private Chart chart() {
		double names = parts.keySet().stream().mapToDouble(use -> LetterWidths.of(name(use), SIZE, false)).max().orElse(0);
		double left = MARGIN + Math.min(MOST_NAME, names) + 34;
		double header = devices.stream().mapToDouble(device -> LetterWidths.of(label(device), SIZE, false)).max().orElse(0);
		double top = MARGIN + 40 + header + 10;
		shapes.add(new Shape.Words(new Point(MARGIN, MARGIN + 14), "Who tells and who needs which data", 15, true, Shape.Words.Align.START, Ink.TEXT));
		legend(MARGIN, MARGIN + 40);
		double bottom = top + parts.size() * ROW;
		columns(left, top, bottom);
		List<List<String>> table = new ArrayList<>(List.of(List.of("message", "told by", "needed by", "shown by", "lacked by", "conflict")));
		double y = top;
		for (Map.Entry<String, Map<String, Set<Part>>> row : parts.entrySet()) {
			row(row.getKey(), row.getValue(), left, y);
			table.add(List.of(name(row.getKey()), who(row.getValue(), Part.TELLS), who(row.getValue(), Part.GETS), who(row.getValue(), Part.SHOWS),
					who(row.getValue(), Part.LACKS), String.join("; ", conflicts.getOrDefault(row.getKey(), List.of()))));
			y += ROW;
		}
		return new Chart(new Scene("Data on board", Math.max(left + devices.size() * COLUMN, 760) + MARGIN, bottom + MARGIN, shapes), table);
	}

	private static String who(Map<String, Set<Part>> row, Part part) {
		return row.entrySet().stream().filter(entry -> entry.getValue().contains(part)).map(entry -> Names.simple(entry.getKey())).collect(Collectors.joining(", "));
	}

	private String name(String use) {
		return use + " " + titles.get(use);
	}

	private String label(String device) {
		return Names.within(figures.boat(), device);
	}

	private void columns(double left, double top, double bottom) {
		for (int i = 0; i < devices.size(); i++) {
			double x = left + i * COLUMN + COLUMN / 2;
			shapes.add(new Shape.Run(List.of(new Point(x, top), new Point(x, bottom)), Stroke.of(Ink.PLACE_EDGE, 0.6)));
			Shape words = new Shape.Words(new Point(x + 4, top - 8), label(devices.get(i)), SIZE, false, Shape.Words.Align.START, Ink.TEXT, true);
			shapes.add(new Shape.Thing(devices.get(i), label(devices.get(i)), words.extent().grown(3), List.of(words)));
		}
	}

	private void row(String use, Map<String, Set<Part>> row, double left, double y) {
		double middle = y + ROW / 2;
		shapes.add(new Shape.Run(List.of(new Point(left, middle), new Point(left + devices.size() * COLUMN, middle)), Stroke.of(Ink.PLACE_EDGE, 0.6)));
		shapes.add(new Shape.Words(new Point(left - 30, middle + 4), LetterWidths.fit(name(use), SIZE, false, MOST_NAME), SIZE, false, Shape.Words.Align.END, Ink.TEXT));
		List<String> gaps = row.entrySet().stream().filter(entry -> entry.getValue().contains(Part.LACKS)).map(entry -> Names.simple(entry.getKey())).toList();
		if (!gaps.isEmpty()) {
			mark(left - 16, middle, Ink.ERROR, row.entrySet().stream().filter(entry -> entry.getValue().contains(Part.LACKS)).findFirst().orElseThrow().getKey(),
					name(use) + "\nlacked by " + String.join(", ", gaps));
		} else if (conflicts.containsKey(use)) {
			mark(left - 16, middle, Ink.WARNING, row.keySet().iterator().next(), name(use) + "\ntold by " + String.join("; ", conflicts.get(use)));
		}
		for (int i = 0; i < devices.size(); i++) {
			Set<Part> does = row.getOrDefault(devices.get(i), Set.of());
			if (!does.isEmpty()) {
				cell(use, devices.get(i), does, left + i * COLUMN + COLUMN / 2, middle);
			}
		}
	}

	private void mark(double x, double y, Ink ink, String element, String tip) {
		Shape sign = ink == Ink.ERROR
				? new Shape.Area(List.of(new Point(x, y - 8), new Point(x + 8, y), new Point(x, y + 8), new Point(x - 8, y)), Optional.of(ink), Optional.empty())
				: new Shape.Area(List.of(new Point(x, y - 8), new Point(x + 8, y + 6), new Point(x - 8, y + 6)), Optional.of(ink), Optional.empty());
		Shape letter = new Shape.Words(new Point(x, y + 4), "!", SIZE, true, Shape.Words.Align.MIDDLE, Ink.GROUND);
		shapes.add(new Shape.Thing(element, tip, new Extent(x - 9, y - 9, 18, 18), List.of(sign, letter)));
	}

	private void cell(String use, String device, Set<Part> does, double x, double y) {
		List<Shape> signs = new ArrayList<>();
		does.forEach(part -> signs.addAll(sign(part, x, y)));
		String tip = label(device) + "\n" + does.stream().map(DataMatrix::word).collect(Collectors.joining(", ")) + " " + name(use);
		shapes.add(new Shape.Thing(device, tip, new Extent(x - COLUMN / 2, y - ROW / 2, COLUMN, ROW), signs));
	}

	private static String word(Part part) {
		return switch (part) {
		case TELLS -> "tells";
		case GETS -> "needs and gets";
		case SHOWS -> "shows";
		case LACKS -> "needs and lacks";
		};
	}

	/** Who tells is full, who needs is a ring, who only shows is a point; who lacks is a cross. */
	private static List<Shape> sign(Part part, double x, double y) {
		return switch (part) {
		case TELLS -> List.of(new Shape.Disc(new Point(x, y), 7, Optional.of(Ink.NETWORK_1), Optional.empty()));
		case GETS -> List.of(new Shape.Disc(new Point(x, y), 7, Optional.of(Ink.GROUND), Optional.of(Stroke.of(Ink.NETWORK_3, 2.4))));
		case SHOWS -> List.of(new Shape.Disc(new Point(x, y), 3, Optional.of(Ink.NETWORK_3), Optional.empty()));
		case LACKS -> List.of(new Shape.Run(List.of(new Point(x - 6, y - 6), new Point(x + 6, y + 6)), Stroke.of(Ink.ERROR, 2.6)),
				new Shape.Run(List.of(new Point(x - 6, y + 6), new Point(x + 6, y - 6)), Stroke.of(Ink.ERROR, 2.6)));
		};
	}

	private void legend(double left, double y) {
		double x = left + 8;
		double down = y;
		for (Part part : Part.values()) {
			shapes.addAll(sign(part, x, down));
			shapes.add(new Shape.Words(new Point(x + 16, down + 4), word(part), SIZE, false, Shape.Words.Align.START, Ink.SOFT_TEXT));
			down += 20;
		}
	}
}
