/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.Termination;
import hullwright.analysis.line.TerminatorPlace.Where;
import hullwright.network.Drop;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.AddCap;
import hullwright.rules.edit.AddToBackbone;
import hullwright.rules.edit.AddToBackbone.End;
import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.Remove;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A terminator is plugged into a port that is meant for a drop.
 */
public final class TerminatorOnDrop implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/terminator-on-drop", "Terminator on a drop port", Severity.ERROR,
				"the terminator {part} is on a port for a drop; terminators belong at the two ends of the backbone",
				"owner's manual of a control system (N2-J), p. 29: never terminate a drop; cap spare ports");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return FittedTerminator.of(boat).stream().filter(terminator -> terminator.place().where() == Where.ON_PORT)
				.map(terminator -> finding(boat, terminator)).toList();
	}

	private static Finding finding(BoatUnderCheck boat, FittedTerminator terminator) {
		Finding.Builder finding = terminator.finding(boat);
		terminator.drop().ifPresent(drop -> finding.fix(fix(boat, terminator, drop)));
		return finding.build();
	}

	/** Takes it off: from before a device alone, else with the whole drop, whose port is capped; an end that lies open gets one. */
	private static Fix fix(BoatUnderCheck boat, FittedTerminator terminator, Drop drop) {
		String part = PartWords.of(terminator.place());
		if (drop.device().isPresent()) {
			return new Fix("Take " + part + " off the drop", Fix.Reach.DESIGN, List.of(new Remove(terminator.place().origin())));
		}
		List<EditIntent> intents = new ArrayList<>();
		intents.add(new Remove(drop.origin()));
		boolean closed = openEnd(boat, terminator).map(intents::add).isPresent();
		boolean capped = cap(boat, terminator, drop).map(intents::add).isPresent();
		return new Fix("Take " + part + " off" + (capped ? ", cap its port" : "") + (closed ? ", terminate the open end" : ""), Fix.Reach.DESIGN, intents);
	}

	private static Optional<EditIntent> openEnd(BoatUnderCheck boat, FittedTerminator terminator) {
		Termination termination = boat.figures().terminationOf(terminator.network(), terminator.backbone());
		End end = termination.openAtStart().isPresent() ? End.START : End.END;
		return termination.openAtStart().or(termination::openAtEnd)
				.flatMap(open -> MatingPart.terminator(boat.boat().partsOnOffer(), open))
				.map(mating -> new AddToBackbone(terminator.backbone().origin(), end, "terminator", end.name().toLowerCase(Locale.ROOT) + "Terminator", mating.identity()));
	}

	private static Optional<EditIntent> cap(BoatUnderCheck boat, FittedTerminator terminator, Drop drop) {
		return boat.figures().jointsOf(terminator.network()).stream()
				.filter(joint -> joint.run().equals(drop.origin()) && joint.position() == 0).findFirst()
				.flatMap(joint -> joint.near().connector().flatMap(port -> MatingPart.cap(boat.boat().partsOnOffer(), port))
						.map(cap -> new AddCap(terminator.network().origin(), joint.near().label(), cap.identity())));
	}
}
