/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Origin;
import hullwright.network.part.Cable;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Part;
import hullwright.spec.AddToWalk;
import hullwright.spec.BackboneCable;
import hullwright.spec.BackboneElement;
import hullwright.spec.BackboneItem;
import hullwright.spec.BackbonePart;
import hullwright.spec.WhenBlock;

/**
 * Copies the walk along a backbone out of the spec.
 */
final class BackboneCopy {

	private final Copying copying;
	private final String network;
	private final Optional<Cable> usualCable;
	private final List<Step> steps = new ArrayList<>();
	private final Map<String, Integer> derivedNames = new HashMap<>();
	private final Map<String, DevicePlan> devices = new HashMap<>();

	/**
	 * One item of the walk.
	 *
	 * @param item the item
	 * @param blocks the conditions around it
	 * @param branches the blocks that it stands in, each with whether it stands in the first part
	 */
	private record Step(BackboneItem item, WhenFitted.Blocks blocks, Map<WhenBlock, Boolean> branches) {

		/** Whether no block has the one in its first part and the other in its second: then no boat has both. */
		boolean canStandWith(Step other) {
			return branches.entrySet().stream().allMatch(branch -> branch.getValue().equals(other.branches.getOrDefault(branch.getKey(), branch.getValue())));
		}
	}

	BackboneCopy(Copying copying, String network, Optional<Cable> usualCable) {
		this.copying = copying;
		this.network = network;
		this.usualCable = usualCable;
	}

	/** The plan of a backbone. */
	BackbonePlan of(hullwright.spec.Backbone backbone, String name) {
		return new BackbonePlan(name, elements(backbone.getElements()), Map.copyOf(devices), copying.places().of(backbone, name));
	}

	/** The elements of a piece that a hull adds to a walk. */
	List<WhenFitted<Element>> elements(AddToWalk added) {
		flatten(walkOf(added.getAnchor()), WhenFitted.Blocks.NONE, Map.of());
		int anchor = steps.stream().map(Step::item).toList().indexOf(added.getAnchor());
		int first = added.isBefore() ? anchor : anchor + 1;
		List<Step> piece = added.getElements().stream().map(item -> new Step(item, WhenFitted.Blocks.NONE, steps.get(anchor).branches)).toList();
		steps.addAll(first, piece);
		return elements(first, first + piece.size());
	}

	/** The walk that an item stands in; the item alone if a hull adds it, too. */
	private static List<? extends BackboneElement> walkOf(BackboneItem item) {
		for (EObject up = item.eContainer(); up != null; up = up.eContainer()) {
			if (up instanceof hullwright.spec.Backbone backbone) {
				return backbone.getElements();
			}
		}
		return List.of(item);
	}

	private List<WhenFitted<Element>> elements(List<? extends BackboneElement> walk) {
		flatten(walk, WhenFitted.Blocks.NONE, Map.of());
		return elements(0, steps.size());
	}

	private List<WhenFitted<Element>> elements(int from, int to) {
		List<WhenFitted<Element>> elements = new ArrayList<>(to - from);
		for (int at = from; at < to; at++) {
			Step step = steps.get(at);
			Optional<? extends Element> element = step.item instanceof BackboneCable cable
					? Optional.of(run(cable, at))
					: fitting((BackbonePart) step.item);
			element.ifPresent(fitted -> elements.add(WhenFitted.under(step.blocks, step.item.getCondition(), fitted)));
		}
		return List.copyOf(elements);
	}

	private void flatten(List<? extends BackboneElement> walk, WhenFitted.Blocks blocks, Map<WhenBlock, Boolean> branches) {
		for (BackboneElement element : walk) {
			if (element instanceof WhenBlock block) {
				flatten(block.getElements(), blocks.when(block.getCondition()), with(branches, block, true));
				flatten(block.getOtherwise(), blocks.otherwise(block.getCondition()), with(branches, block, false));
			} else {
				steps.add(new Step((BackboneItem) element, blocks, branches));
			}
		}
	}

	private static Map<WhenBlock, Boolean> with(Map<WhenBlock, Boolean> branches, WhenBlock block, boolean first) {
		Map<WhenBlock, Boolean> more = new HashMap<>(branches);
		more.put(block, first);
		return more;
	}

	private CableRun run(BackboneCable cable, int at) {
		String name = network + "." + (cable.getName() == null ? derivedName(at) : cable.getName());
		return RunPlan.cable(cable, name, usualCable, copying);
	}

	/** A cable without a name is known by the parts it can run between, whichever of them a boat has. */
	private String derivedName(int at) {
		String name = nearestPart(at, -1).orElse("start") + "-to-" + nearestPart(at, 1).orElse("end");
		int count = derivedNames.merge(name, 1, Integer::sum);
		return count == 1 ? name : name + "-" + count;
	}

	private Optional<String> nearestPart(int from, int direction) {
		Step cable = steps.get(from);
		for (int at = from + direction; at >= 0 && at < steps.size(); at += direction) {
			Step step = steps.get(at);
			if (step.item instanceof BackbonePart && step.item.getName() != null && cable.canStandWith(step)) {
				return Optional.of(step.item.getName());
			}
		}
		return Optional.empty();
	}

	private Optional<Fitting> fitting(BackbonePart part) {
		String name = network + "." + part.getName();
		Origin origin = copying.places().of(part, name);
		return copying.parts().of(part.getType()).map(type -> new Fitting(name, type, false,
				new Fitting.Details(Copying.name(part.getPlace()), Copying.name(part.getBulkhead()), Copying.text(part.getLabel()),
						part.getFeed().stream().map(copying.names()::of).toList(), part.isEarthsShield(), device(part, name, type, origin)),
				origin));
	}

	/** The device that the backbone runs through, or the one behind an in-line terminator. */
	private Optional<FittedDevice> device(BackbonePart part, String name, Part type, Origin origin) {
		Optional<DevicePlan> device = type instanceof DeviceModel model
				? Optional.of(DevicePlan.inBackbone(name, model, Copying.name(part.getPlace()), Copying.text(part.getLabel()), origin))
				: Optional.ofNullable(part.getBehind()).flatMap(behind -> DevicePlan.of(behind, copying));
		device.ifPresent(plan -> devices.put(plan.usual().name(), plan));
		return device.map(DevicePlan::usual);
	}
}
