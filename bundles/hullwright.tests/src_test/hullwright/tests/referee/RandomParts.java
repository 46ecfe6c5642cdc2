/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Makes up the parts that one boat is built of. Every call may give another part; parts of one name are equal.
 */
final class RandomParts {

	private static final List<Integer> GAUGES = List.of(14, 16, 18, 20, 22);
	private static final List<Double> AREAS = List.of(0.34, 0.5, 0.75, 1.0, 1.5, 2.5);

	private final Random random;
	private final PartKind.Family round;
	private final PartKind.Family clip;
	private final List<PartKind.Cable> roundCables;
	private final List<PartKind.Cable> clipCables;
	private final PartKind.Cable reel;
	private final Optional<PartKind.FuseKind> fuseKind;

	RandomParts(Random random) {
		this.random = random;
		round = new PartKind.Family("roundLock", Optional.of(milli(1, 10)));
		clip = new PartKind.Family("clipLock", random.nextInt(3) == 0 ? Optional.empty() : Optional.of(milli(1, 25)));
		roundCables = List.of(cable("trunk", Optional.of(round)), cable("branchCable", Optional.of(round)));
		clipCables = List.of(cable("clipTrunk", Optional.of(clip)), cable("clipBranch", Optional.of(clip)));
		reel = cable("reelCable", Optional.empty());
		fuseKind = random.nextBoolean() ? Optional.empty() : Optional.of(new PartKind.FuseKind("strip", random.nextInt(3) == 0 ? Optional.empty() : Optional.of(milli(50, 200))));
	}

	private double milli(int least, int most) {
		return between(least, most) / 1000.0;
	}

	private int between(int least, int most) {
		return least + random.nextInt(most - least + 1);
	}

	PartKind.Family family() {
		return random.nextInt(4) == 0 ? clip : round;
	}

	PartKind.Family other(PartKind.Family family) {
		return family.equals(round) ? clip : round;
	}

	private PartKind.Cable cable(String name, Optional<PartKind.Family> family) {
		return new PartKind.Cable(name, family, random.nextInt(8) == 0 ? Optional.empty() : Optional.of(wire()));
	}

	/** Any conductor of an instrument cable. */
	PartKind.Wire wire() {
		return switch (random.nextInt(3)) {
		case 0 -> PartKind.Wire.ofGauge(pick(GAUGES));
		case 1 -> PartKind.Wire.ofArea(pick(AREAS));
		default -> new PartKind.Wire(pick(GAUGES), 0, Optional.of(milli(8, 70)));
		};
	}

	/** A wire from a supply, which declares no resistance. */
	PartKind.Wire leadWire() {
		return random.nextBoolean() ? PartKind.Wire.ofGauge(2 * between(5, 8)) : PartKind.Wire.ofArea(pick(List.of(1.0, 1.5, 2.5, 4.0)));
	}

	private <T> T pick(List<T> from) {
		return from.get(random.nextInt(from.size()));
	}

	/** A cable that plugs into a family, or now and then one from the reel with plugs fitted by the neighbours. */
	PartKind.Cable cable(PartKind.Family family) {
		return random.nextInt(6) == 0 ? reel : moulded(family);
	}

	PartKind.Cable moulded(PartKind.Family family) {
		return pick(family.equals(round) ? roundCables : clipCables);
	}

	PartKind.Cable reel() {
		return reel;
	}

	PartKind.Fuse fuse() {
		return new PartKind.Fuse(pick(List.of(3.0, 5.0, 10.0)), fuseKind);
	}

	PartKind.Tee tee(PartKind.Family family) {
		boolean mixed = random.nextInt(6) == 0;
		int ports = pick(List.of(1, 1, 2, 4));
		return new PartKind.Tee((family.equals(round) ? "round" : "clip") + "Tee" + ports + (mixed ? "Mixed" : ""), family, mixed ? other(family) : family, ports);
	}

	PartKind.Terminator terminator(PartKind.Family family, PartKind.Terminator.Place place) {
		String kind = switch (place) {
		case PINS -> "EndMale";
		case SOCKETS -> "EndFemale";
		case IN_LINE -> "EndInLine";
		};
		return new PartKind.Terminator((family.equals(round) ? "round" : "clip") + kind, family, place);
	}

	PartKind.FeedThrough wall(PartKind.Family family) {
		return new PartKind.FeedThrough(family.equals(round) ? "roundWall" : "clipWall", family);
	}

	/** An adapter whose first end fits a family and whose second fits the other one, or if turned the other way round. */
	PartKind.Adapter adapter(PartKind.Family from, boolean turned, boolean carriesPower) {
		PartKind.Family pins = turned ? other(from) : from;
		String name = (pins.equals(round) ? "roundToClip" : "clipToRound") + (carriesPower ? "" : "Signal");
		Optional<Double> length = pins.equals(round) ? Optional.of(0.4) : Optional.empty();
		return new PartKind.Adapter(name, pins, other(pins), length, pins.equals(round) ? Optional.of(PartKind.Wire.ofArea(0.5)) : Optional.empty(), carriesPower);
	}

	/** A tap; which side one with one side feeds follows from how it lies. */
	PartKind.Tap tap(PartKind.Family family, PartKind.Tap.Feeds feeds, boolean breaksSupply) {
		boolean fused = random.nextBoolean();
		String name = (family.equals(round) ? "round" : "clip") + "Tap" + switch (feeds) {
		case BOTH -> "Both";
		case MALE_SIDE -> "Male";
		case FEMALE_SIDE -> "Female";
		} + (breaksSupply ? "Apart" : "") + (fused ? "Fused" : "");
		return new PartKind.Tap(name, family, feeds, breaksSupply, fused ? Optional.of(new PartKind.Fuse(3, fuseKind)) : Optional.empty());
	}

	PartKind.Isolator isolator(PartKind.Family family, boolean breaksSupply, boolean joinsReturn) {
		String name = (family.equals(round) ? "round" : "clip") + "Gap" + (breaksSupply ? "Supply" : "") + (joinsReturn ? "Joined" : "");
		return new PartKind.Isolator(name, family, breaksSupply, joinsReturn);
	}

	PartKind.Cord cord(PartKind.Family family) {
		return family.equals(round)
				? new PartKind.Cord("roundCord", round, 1, Optional.of(PartKind.Wire.ofGauge(18)), Optional.of(new PartKind.Fuse(3, fuseKind)))
				: new PartKind.Cord("clipCord", clip, 2.5, Optional.empty(), Optional.empty());
	}
}
