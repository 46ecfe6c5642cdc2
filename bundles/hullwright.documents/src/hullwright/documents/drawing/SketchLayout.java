/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Extent;
import hullwright.documents.scene.LetterWidths;
import hullwright.documents.scene.Point;
import hullwright.network.CableRun;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds where everything goes: widths from the bow aft, then the lines that run side by side, then heights from the top down.
 */
final class SketchLayout {

	static final double TITLE = 24;
	static final double LANE = 46;
	static final double SUPPLY_WIDTH = 190;
	static final double SUPPLY_HEIGHT = 40;
	private static final double PAD = 16;
	private static final double LABEL_SIZE = 11;
	private static final double LEAST_LINK = 14;
	private static final double LEG_STEP = 14;
	private static final double LOOSE_END = 60;

	private final Sketch sketch;
	private final double left;
	private final double top;
	private final Map<Trunk, Map<Integer, Integer>> lanes = new LinkedHashMap<>();
	private final int[] lanesInRow;
	private final double[] gapLeft;
	private final TrackAllocation[] gaps;
	private final TrackAllocation[] channels;
	private final double[] channelBottom;
	private double right;
	private double bottom;

	SketchLayout(Sketch sketch, double left, double top) {
		this.sketch = sketch;
		this.left = left;
		this.top = top;
		lanesInRow = new int[sketch.grid.rows()];
		gapLeft = new double[sketch.grid.columns() + 1];
		gaps = new TrackAllocation[sketch.grid.columns() + 1];
		channels = new TrackAllocation[sketch.grid.rows()];
		channelBottom = new double[sketch.grid.rows()];
		for (int i = 0; i < gaps.length; i++) {
			gaps[i] = new TrackAllocation();
		}
		for (int i = 0; i < channels.length; i++) {
			channels[i] = new TrackAllocation();
		}
	}

	/** Places everything, and tells the lower right corner of what it took. */
	Point arrange() {
		sketch.trunks.forEach(this::walk);
		sketch.trunks.forEach(this::takeLanes);
		Map<Connection, ConnectionRoute> routes = new LinkedHashMap<>();
		sketch.connections.stream().filter(line -> !line.isShort()).forEach(line -> routes.put(line, new ConnectionRoute(line, gaps)));
		takeGaps();
		across();
		routes.values().forEach(route -> route.findRise(this::gapX));
		routes.values().stream().sorted(Comparator.comparingDouble(ConnectionRoute::reach)).forEach(route -> route.takeChannels(channels));
		List<TrunkCourse> courses = new ArrayList<>();
		sketch.trunks.forEach(trunk -> courses.add(new TrunkCourse(trunk, this::gapX, channels)));
		courses.forEach(TrunkCourse::choose);
		down();
		routes.values().forEach(route -> route.lay(this::channelY));
		courses.forEach(course -> course.lay(this::channelY));
		sketch.connections.stream().filter(Connection::isShort).forEach(SketchLayout::layShort);
		return new Point(right, bottom);
	}

	/** By which side the backbone leaves each place and enters the next, and so which way it runs in it. */
	private void walk(Trunk trunk) {
		Stay.Side entry = null;
		for (int i = 0; i < trunk.stays.size(); i++) {
			Stay stay = trunk.stays.get(i);
			Stay.Side exit = null;
			Stay.Side next = null;
			if (i + 1 < trunk.stays.size()) {
				Trunk.Crossing crossing = new Trunk.Crossing(stay, trunk.stays.get(i + 1));
				exit = exit(crossing, entry);
				next = crossing.isStraightUp() ? exit : exit.opposite();
				if (crossing.isStraightUp()) {
					orderDeck(trunk, i + 1, next);
				}
				crossing.exit = exit;
				crossing.entry = next;
				trunk.crossings.add(crossing);
			}
			stay.rightwards = entry == Stay.Side.LEFT || entry == null && exit != Stay.Side.LEFT;
			entry = next;
		}
	}

	/** On a deck that the backbone comes to from a side, the places lie in the order in which it visits them. */
	private void orderDeck(Trunk trunk, int first, Stay.Side from) {
		DrawnPlace entered = trunk.stays.get(first).place;
		List<DrawnPlace> beside = sketch.grid.at(entered.column, entered.row);
		if (beside.stream().allMatch(place -> place.order == 0)) {
			int order = 0;
			for (int i = first; i < trunk.stays.size() && beside.contains(trunk.stays.get(i).place); i++) {
				DrawnPlace visited = trunk.stays.get(i).place;
				visited.order = visited.order != 0 ? visited.order : from == Stay.Side.LEFT ? order - beside.size() : beside.size() - order;
				order++;
			}
		}
	}

	private Stay.Side exit(Trunk.Crossing crossing, Stay.Side entry) {
		DrawnPlace from = crossing.from.place;
		DrawnPlace to = crossing.to.place;
		if (from.column != to.column) {
			return from.column < to.column ? Stay.Side.RIGHT : Stay.Side.LEFT;
		}
		if (from.row == to.row) {
			List<DrawnPlace> beside = sketch.grid.at(from.column, from.row);
			return beside.indexOf(from) < beside.indexOf(to) ? Stay.Side.RIGHT : Stay.Side.LEFT;
		}
		return entry == null ? Stay.Side.LEFT : entry.opposite();
	}

	private void takeLanes(Trunk trunk) {
		Map<Integer, Integer> byRow = new LinkedHashMap<>();
		trunk.stays.forEach(stay -> byRow.computeIfAbsent(stay.place.row, row -> lanesInRow[row]++));
		lanes.put(trunk, byRow);
	}

	private void takeGaps() {
		for (Trunk trunk : sketch.trunks) {
			for (Trunk.Crossing crossing : trunk.crossings) {
				if (crossing.changesDeck()) {
					int column = crossing.to.place.column;
					crossing.gap = crossing.entry == Stay.Side.LEFT ? column : column + 1;
					crossing.track = gaps[crossing.gap].track(crossing.from.place.row, crossing.to.place.row);
				}
			}
		}
	}

	private double gapX(int gap, int track) {
		return gapLeft[gap] + PAD + track * CardStack.TRACK;
	}

	/** From the bottom of a channel up. */
	private double channelY(int row, int track) {
		return channelBottom[row] - 10 - track * CardStack.TRACK;
	}

	private void across() {
		double x = left;
		sketch.grid.all().forEach(SketchLayout::measure);
		for (int column = 0; column < sketch.grid.columns(); column++) {
			gapLeft[column] = x;
			x += gapWidth(column);
			double width = 0;
			for (int row = 0; row < sketch.grid.rows(); row++) {
				width = Math.max(width, sketch.grid.at(column, row).stream().mapToDouble(place -> place.width).sum());
			}
			for (int row = 0; row < sketch.grid.rows(); row++) {
				List<DrawnPlace> beside = sketch.grid.at(column, row);
				double more = (width - beside.stream().mapToDouble(place -> place.width).sum()) / Math.max(1, beside.size());
				double at = x;
				for (DrawnPlace place : beside) {
					place.width += more;
					place.extent = new Extent(at, 0, place.width, 0);
					fill(place, at + PAD);
					at += place.width;
				}
			}
			x += width;
		}
		gapLeft[sketch.grid.columns()] = x;
		right = x + gapWidth(sketch.grid.columns());
	}

	private double gapWidth(int gap) {
		return 2 * PAD + Math.max(0, gaps[gap].count() - 1) * CardStack.TRACK;
	}

	private static void measure(DrawnPlace place) {
		double content = fill(place, PAD) + PAD;
		place.width = Math.max(content, LetterWidths.of(place.title, 13, true) + LetterWidths.of(place.zones(), 10, false) + 2 * PAD + 20);
	}

	/** Puts what is in a place from a left side on, and tells where that ends. */
	private static double fill(DrawnPlace place, double from) {
		double x = from;
		if (!place.visitors.cards.isEmpty()) {
			x = put(place.visitors, x) + PAD;
		}
		for (Stay stay : place.stays) {
			x = fill(stay, x) + PAD;
		}
		return x - (x == from ? 0 : PAD);
	}

	private static double put(CardStack stack, double x) {
		stack.x = x;
		stack.cards.forEach(card -> card.extent = new Extent(x, card.extent.y(), Card.WIDTH, Card.HEIGHT));
		return x + stack.width();
	}

	private static double fill(Stay stay, double from) {
		List<Stop> shown = stay.leftToRight();
		double end = from + (hasLooseEnd(stay, true) ? LOOSE_END : 0);
		double symbolRight = end - LEAST_LINK;
		for (int i = 0; i < shown.size(); i++) {
			Stop stop = shown.get(i);
			List<CableRun> link = i == 0 ? List.of() : stay.rightwards ? stop.before : shown.get(i - 1).before;
			double reserve = Math.max(0, (stop.supplies().size() * SUPPLY_WIDTH - stop.width()) / 2);
			double leftSide = Math.max(Math.max(end, symbolRight + linkWidth(link)), end + reserve);
			stop.x = leftSide + stop.width() / 2;
			stop.spreadPorts();
			symbolRight = stop.right();
			end = Math.max(symbolRight + LEAST_LINK, symbolRight + reserve + 8);
			if (!stop.cards.cards.isEmpty()) {
				end = Math.max(end, put(stop.cards, symbolRight + legRoom(stop)) + PAD);
			}
		}
		return end + (hasLooseEnd(stay, false) ? LOOSE_END : 0);
	}

	/** Whether cable without a part at its end sticks out at a side. */
	private static boolean hasLooseEnd(Stay stay, boolean atLeft) {
		boolean atStart = atLeft == stay.rightwards;
		return atStart ? !stay.first().before.isEmpty() && stay.backbone.elements().get(0) instanceof CableRun
				: stay.backbone.elements().get(stay.backbone.elements().size() - 1) instanceof CableRun;
	}

	private static double linkWidth(List<CableRun> cables) {
		double width = 0;
		for (CableRun cable : cables) {
			width += Math.max(52, LetterWidths.of(cable.length().toString(), LABEL_SIZE, false) + 16);
		}
		return Math.max(LEAST_LINK, width);
	}

	private static double legRoom(Stop stop) {
		int most = 0;
		for (Stop.Port port : stop.ports) {
			if (port.taken != null && port.taken.isShort()) {
				most = Math.max(most, (int) port.taken.legs.stream().filter(leg -> !(leg instanceof CableRun)).count());
			}
		}
		return 44 + most * LEG_STEP;
	}

	private void down() {
		double y = top;
		for (int row = sketch.grid.rows() - 1; row >= 0; row--) {
			int of = row;
			List<DrawnPlace> places = sketch.grid.all().stream().filter(place -> place.row == of).toList();
			channelBottom[row] = y + 14 + channels[row].count() * CardStack.TRACK;
			double stacks = places.stream().flatMap(place -> place.stacks().stream()).mapToDouble(CardStack::height).max().orElse(0);
			boolean fed = places.stream().flatMap(place -> place.stays.stream()).flatMap(stay -> stay.stops.stream())
					.anyMatch(stop -> !stop.supplies().isEmpty() || stop.fitting.details().earthsShield());
			double lanesTop = channelBottom[row] + TITLE + stacks + PAD;
			double end = lanesTop + lanesInRow[row] * LANE + (fed ? SUPPLY_HEIGHT + 22 : 6);
			for (DrawnPlace place : places) {
				place.extent = new Extent(place.extent.x(), channelBottom[row], place.width, end - channelBottom[row]);
				place.stacks().forEach(stack -> raise(stack, lanesTop - PAD + CardStack.GAP));
			}
			for (Trunk trunk : sketch.trunks) {
				Integer lane = lanes.get(trunk).get(row);
				trunk.stays.stream().filter(stay -> stay.place.row == of)
						.forEach(stay -> stay.stops.forEach(stop -> stop.y = lanesTop + lane * LANE + LANE / 2));
			}
			y = end;
		}
		bottom = y;
	}

	private static void raise(CardStack stack, double from) {
		double y = from;
		for (Card card : stack.cards) {
			y -= Card.HEIGHT + CardStack.GAP;
			card.extent = new Extent(card.extent.x(), y, Card.WIDTH, Card.HEIGHT);
		}
	}

	private static void layShort(Connection line) {
		double y = line.to.extent.y() + Card.HEIGHT / 2;
		line.course = List.of(new Point(line.port.x, line.stop.top()), new Point(line.port.x, y), new Point(line.to.extent.x(), y));
	}
}
