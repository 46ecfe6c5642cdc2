/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.lang.imports.BuiltInCatalogs;
import hullwright.network.part.Connector;
import hullwright.network.part.Part;
import hullwright.resolve.SeriesPlan;
import hullwright.rules.edit.TextChange;
import hullwright.spec.Series;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What stands in the texts of projects, and how a person's additions are written into them. Safe for use by several threads.
 */
public final class ProjectTexts {

	private final Object reading;
	private final SpecReader reader;
	private final Map<Series, SeriesPlan> plans;

	/**
	 * Reads as an engine does.
	 *
	 * @param reading the lock that guards reading
	 */
	ProjectTexts(Object reading, SpecReader reader, Map<Series, SeriesPlan> plans) {
		this.reading = reading;
		this.reader = reader;
		this.plans = plans;
	}

	/** The series of a project that can be read, in the order of their files. */
	public List<SeriesInText> series(Snapshot snapshot) {
		synchronized (reading) {
			PlannedSeries planned = PlannedSeries.of(reader.read(snapshot), CheckRequest.ofAll(snapshot, LocalDate.EPOCH), plans);
			return planned.plans().stream().map(plan -> new SeriesInText(plan.origin().file(), plan.outline(), plan.options())).toList();
		}
	}

	/** The catalogs of a project, in the order of their files; one that has errors is there with what could be read. */
	public List<CatalogInText> catalogs(Snapshot snapshot) {
		synchronized (reading) {
			return CatalogInText.of(reader.read(snapshot));
		}
	}

	/** An addition as a change of text; empty if the text no longer has the series or catalog at that place. */
	public Optional<TextChange> rendered(Snapshot snapshot, Addition addition) {
		synchronized (reading) {
			return new IntentRendering(reader.read(snapshot)).render(addition);
		}
	}

	/** The parts that a project can use: those of its own catalogs first, then the built-in ones. */
	public List<OfferedPart> parts(Snapshot snapshot) {
		synchronized (reading) {
			return new PartsOnShelf(reader).all(snapshot);
		}
	}

	/** The connectors of the part that a place in a text names; none if it names no part. */
	public Set<Connector> connectorsAt(Snapshot snapshot, String file, int offset) {
		synchronized (reading) {
			return new PartsOnShelf(reader).connectorsAt(snapshot, file, offset);
		}
	}

	/** All connectors of a part, those of its ports included. */
	public static Set<Connector> connectors(Part part) {
		return PartsOnShelf.connectors(part);
	}

	/**
	 * The changes that put a part into a text, with the import that it needs: in the backbone beside the item at a place, or on a
	 * free port.
	 *
	 * @param file the file of the series
	 * @param offset the place in it
	 * @throws PartRefused if there is no place for the part
	 */
	public List<TextChange> insert(Snapshot snapshot, String file, int offset, OfferedPart part) throws PartRefused {
		synchronized (reading) {
			return new PartsOnShelf(reader).insert(snapshot, file, offset, part);
		}
	}

	/** The text of a built-in catalog, by the name under which it is imported. */
	public static Optional<String> builtIn(String name) {
		try (InputStream text = BuiltInCatalogs.open(BuiltInCatalogs.uriOf(name.substring(name.indexOf(':') + 1)))) {
			return text == null ? Optional.empty() : Optional.of(new String(text.readAllBytes(), StandardCharsets.UTF_8));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
