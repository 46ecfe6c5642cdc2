/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.lang.HullLanguage;
import hullwright.lang.edit.BackboneText;
import hullwright.lang.edit.BackboneText.Item;
import hullwright.lang.edit.CatalogText;
import hullwright.lang.edit.DropText;
import hullwright.lang.edit.ElementText;
import hullwright.lang.edit.LineText;
import hullwright.lang.edit.NetworkText;
import hullwright.lang.edit.PartNames;
import hullwright.lang.edit.PropertyText;
import hullwright.lang.edit.SeriesText;
import hullwright.lang.edit.TextEdit;
import hullwright.lang.edit.WordsText;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.network.Origin;
import hullwright.quantity.Length;
import hullwright.rules.edit.AddCap;
import hullwright.rules.edit.AddDrop;
import hullwright.rules.edit.AddFeed;
import hullwright.rules.edit.AddToBackbone;
import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.InsertInBackbone;
import hullwright.rules.edit.InsertInBackbone.Side;
import hullwright.rules.edit.InsertInDrop;
import hullwright.rules.edit.MoveInBackbone;
import hullwright.rules.edit.PlugInto;
import hullwright.rules.edit.Remove;
import hullwright.rules.edit.ReplacePart;
import hullwright.rules.edit.ReplaceText;
import hullwright.rules.edit.Reword;
import hullwright.rules.edit.SetLength;
import hullwright.rules.edit.SetProperty;
import hullwright.rules.edit.SetRate;
import hullwright.rules.edit.TextChange;
import hullwright.rules.report.Occurrence;
import hullwright.spec.Backbone;
import hullwright.spec.BackboneItem;
import hullwright.spec.Catalog;
import hullwright.spec.DataNetwork;
import hullwright.spec.SerialLine;
import hullwright.spec.Series;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/**
 * Finds what an edit is about in the texts and lets the language write it. What is not found, or is of another kind than the edit
 * is for, gives no change.
 */
final class IntentRendering {

	private final ElementsInText elements;
	private final PartNames parts = new PartNames(HullLanguage.services().getInstance(VisibleCatalogs.class));

	IntentRendering(ReadProject project) {
		elements = new ElementsInText(project);
	}

	/** The change of text that an addition comes to; empty if there is no such series or catalog any more. */
	Optional<TextChange> render(Addition addition) {
		Origin block = addition.block();
		Optional<TextEdit> edit = switch (addition.kind()) {
			case HULL -> at(block, Series.class).flatMap(series -> SeriesText.hull(series, addition.statement()));
			case WAIVER -> at(block, Series.class).flatMap(series -> SeriesText.waiver(series, addition.statement()));
			case PART -> at(block, Catalog.class).flatMap(catalog -> CatalogText.part(catalog, addition.statement()));
		};
		return edit.map(each -> in(block, each));
	}

	/** The changes of text that an edit comes to, for a finding on some boats; empty if it cannot be made. */
	List<TextChange> render(EditIntent intent, Occurrence occurrence) {
		boolean onHullsOnly = !occurrence.onAll() && occurrence.condition().isEmpty();
		String when = occurrence.condition();
		if (intent instanceof ReplaceText replace) {
			Origin place = replace.place();
			return List.of(new TextChange(place.file(), place.offset(), place.length(), replace.replacement()));
		} else if (intent instanceof SetProperty set) {
			return at(set.element(), EObject.class).map(element -> PropertyText.set(element, set.property(), set.value())).map(edit -> in(set.element(), edit)).stream().toList();
		} else if (intent instanceof Remove remove) {
			return at(remove.element(), EObject.class).map(new ElementText(parts)::remove).map(edit -> in(remove.element(), edit)).stream().toList();
		} else if (intent instanceof ReplacePart replace) {
			return at(replace.element(), EObject.class).flatMap(element -> new ElementText(parts).replacePart(element, replace.old().catalog(), replace.old().name(),
					replace.part().catalog(), replace.part().name())).map(edit -> in(replace.element(), edit)).stream().toList();
		} else if (intent instanceof SetLength set) {
			return at(set.element(), EObject.class).flatMap(element -> new ElementText(parts).setLength(element, set.old(), set.length()))
					.map(edit -> in(set.element(), edit)).stream().toList();
		} else if (intent instanceof SetRate set) {
			return one(set.line(), at(set.line(), SerialLine.class).map(line -> LineText.rate(line, set.rate().toString())));
		} else if (intent instanceof PlugInto plug) {
			return one(plug.run(), at(plug.run(), EObject.class).flatMap(run -> DropText.plug(run, plug.old(), plug.port())));
		} else if (intent instanceof Reword reword) {
			return one(reword.element(), at(reword.element(), EObject.class).flatMap(element -> WordsText.change(element, reword.old(), reword.words())));
		} else if (intent instanceof MoveInBackbone move) {
			return move(move);
		}
		return onHullsOnly ? List.of() : addition(intent, when);
	}

	private List<TextChange> move(MoveInBackbone move) {
		Optional<BackboneItem> item = at(move.element(), BackboneItem.class);
		Optional<BackboneItem> neighbour = at(move.neighbour(), BackboneItem.class);
		return item.isEmpty() || neighbour.isEmpty() ? List.of()
				: new BackboneText(parts).move(item.get(), neighbour.get(), move.side() == Side.BEFORE).stream().map(edit -> in(move.element(), edit)).toList();
	}

	private List<TextChange> addition(EditIntent intent, String when) {
		BackboneText walk = new BackboneText(parts);
		NetworkText network = new NetworkText(parts);
		if (intent instanceof AddToBackbone add) {
			Item item = new Item(add.keyword(), add.name(), add.part().catalog(), add.part().name(), when);
			return one(add.backbone(), at(add.backbone(), Backbone.class).flatMap(backbone -> walk.add(backbone, add.end() == AddToBackbone.End.START, item)));
		} else if (intent instanceof InsertInBackbone insert) {
			Item item = new Item(insert.keyword(), insert.name(), insert.part().catalog(), insert.part().name(), when);
			return one(insert.neighbour(), at(insert.neighbour(), BackboneItem.class).map(neighbour -> walk.insert(neighbour, insert.side() == Side.BEFORE, item)));
		} else if (intent instanceof InsertInDrop insert) {
			return one(insert.drop(), at(insert.drop(), EObject.class)
					.flatMap(drop -> new DropText(parts).insert(drop, insert.position(), insert.part().catalog(), insert.part().name())));
		} else if (intent instanceof AddCap add) {
			return one(add.network(), at(add.network(), DataNetwork.class)
					.flatMap(found -> network.cap(found, add.port(), add.cap().catalog(), add.cap().name(), when)));
		} else if (intent instanceof AddFeed add) {
			return one(add.network(), at(add.network(), DataNetwork.class)
					.flatMap(found -> network.feed(found, add.port(), add.cord().catalog(), add.cord().name(), add.supply(), when)));
		} else if (intent instanceof AddDrop add) {
			return one(add.network(), at(add.network(), DataNetwork.class).flatMap(found -> network.drop(found, add.port(), add.cable().map(Length::toString),
					add.name(), add.device().catalog(), add.device().name(), when)));
		}
		return List.of();
	}

	private static List<TextChange> one(Origin place, Optional<TextEdit> edit) {
		return edit.map(found -> in(place, found)).stream().toList();
	}

	private static TextChange in(Origin place, TextEdit edit) {
		return new TextChange(place.file(), edit.offset(), edit.length(), edit.replacement());
	}

	private <T extends EObject> Optional<T> at(Origin place, Class<T> kind) {
		return elements.at(place, kind);
	}
}
