/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import java.util.Optional;

import hullwright.network.Fitting;
import hullwright.network.part.Adapter;
import hullwright.network.part.Cord;
import hullwright.network.part.Connector;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Fuse;
import hullwright.network.part.Gender;
import hullwright.network.part.Isolator;
import hullwright.network.part.Part;
import hullwright.network.part.Tap;
import hullwright.quantity.Length;

/**
 * What is inside of parts, between their sides.
 */
final class PartSpans {

	private PartSpans() {
	}

	/** Whether a part has two sides that are not simply one point. */
	static boolean hasTwoSides(Part part) {
		return part instanceof Isolator || part instanceof Adapter || part instanceof Cord || part instanceof Tap
				|| part instanceof DeviceModel device && !device.isolations().isEmpty();
	}

	/** What joins the two sides of a part other than a tap, if anything does. */
	static Optional<Inside> between(Part part) {
		if (part instanceof Isolator isolator) {
			return Optional.of(new Inside(Medium.Inside.JOINED,
					new Span.Passes(!isolator.breaksSupply(), isolator.joinsReturn(), true)));
		} else if (part instanceof Adapter adapter) {
			return Optional.of(new Inside(
					new Medium.Conductors(adapter.length().orElse(Length.ZERO), adapter.power(), adapter.signal(), Optional.empty(), adapter.rated()),
					new Span.Passes(adapter.carriesPower(), true, true)));
		} else if (part instanceof Cord cord) {
			return Optional.of(new Inside(
					new Medium.Conductors(cord.length().orElse(Length.ZERO), cord.power(), Optional.empty(), Optional.empty(), cord.rated()),
					Span.Passes.ALL));
		}
		return Optional.empty();
	}

	/** What lies inside of a part. */
	record Inside(Medium medium, Span.Passes passes) {
	}

	/**
	 * What joins the sides of a tap and the place where its supplies enter.
	 *
	 * @param start from the entry to the side towards the start; the supply conductor at most
	 * @param end from the entry to the side towards the end; the supply conductor at most
	 * @param entries how many places of entry there are: two where each side has a supply of its own
	 */
	record TapInside(Optional<Inside> start, Optional<Inside> end, int entries) {

		static TapInside of(Fitting fitting, Tap tap) {
			boolean apart = tap.breaksSupply() && tap.onlySide().isEmpty() && fitting.details().feeds().size() > 1;
			boolean start = feeds(tap, fitting.towardsStart());
			boolean end = feeds(tap, fitting.towardsEnd());
			boolean unfed = fitting.details().feeds().isEmpty();
			if (tap.breaksSupply() && unfed) {
				return new TapInside(supply(tap.fuseEachSide(), Optional.empty()), Optional.empty(), 1);
			}
			return new TapInside(side(tap, start, BackboneSide.TOWARDS_START), side(tap, end, BackboneSide.TOWARDS_END), apart ? 2 : 1);
		}

		private static Optional<Inside> side(Tap tap, boolean fed, BackboneSide side) {
			if (fed) {
				return supply(tap.fuseEachSide(), tap.fuseEachSide().map(fuse -> side));
			}
			return tap.breaksSupply() ? Optional.empty() : supply(Optional.empty(), Optional.empty());
		}

		private static Optional<Inside> supply(Optional<Fuse> fuse, Optional<BackboneSide> side) {
			return Optional.of(new Inside(new Medium.Inside(fuse, side), new Span.Passes(true, false, false)));
		}

		private static boolean feeds(Tap tap, Optional<Connector> side) {
			Optional<Gender> only = tap.onlySide();
			return only.isEmpty() || side.map(Connector::gender).equals(only);
		}
	}
}
