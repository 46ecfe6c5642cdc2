/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.lang.HullLanguage;
import hullwright.lang.edit.ImportText;
import hullwright.lang.edit.PartInsertion;
import hullwright.lang.edit.PartNames;
import hullwright.lang.edit.TextEdit;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.network.part.Connector;
import hullwright.network.part.Part;
import hullwright.network.part.Tee;
import hullwright.resolve.PartsOfCatalog;
import hullwright.rules.edit.TextChange;
import hullwright.spec.Catalog;
import hullwright.spec.PartType;
import hullwright.spec.SpecFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

/**
 * The parts that a project can use: those of its own catalogs and the built-in ones. The caller holds the lock that guards reading.
 */
final class PartsOnShelf {

	private final SpecReader reader;
	private final VisibleCatalogs visible = HullLanguage.services().getInstance(VisibleCatalogs.class);

	PartsOnShelf(SpecReader reader) {
		this.reader = reader;
	}

	/** All of them, those of the house first. */
	List<OfferedPart> all(Snapshot snapshot) {
		List<OfferedPart> found = new ArrayList<>();
		reader.read(snapshot).files().forEach((path, file) -> add(found, path, false, file));
		reader.builtIn().forEach((name, file) -> add(found, name, true, file));
		return found;
	}

	private static void add(List<OfferedPart> found, String file, boolean builtIn, SpecFile spec) {
		catalogs(spec).forEach(catalog -> PartsOfCatalog.of(catalog, new TextOrigins())
				.forEach(each -> found.add(new OfferedPart(catalog.getName(), file, builtIn, each.part(), each.origin()))));
	}

	private static List<Catalog> catalogs(SpecFile spec) {
		return spec.getDeclarations().stream().filter(Catalog.class::isInstance).map(Catalog.class::cast).filter(catalog -> catalog.getName() != null).toList();
	}

	/** The changes that insert a part at a place of a file, the import that it needs included. */
	List<TextChange> insert(Snapshot snapshot, String file, int offset, OfferedPart part) throws PartRefused {
		SpecFile spec = sound(snapshot, file);
		Optional<TextChange> imported = visible.from(spec).stream().anyMatch(catalog -> catalog.getName() != null && catalog.getName().equals(part.catalog()))
				? Optional.empty()
				: Optional.of(in(file, ImportText.add(spec, importPath(file, part))));
		int shift = imported.map(change -> change.replacement().length()).orElse(0);
		int head = imported.map(TextChange::offset).orElse(0);
		if (imported.isPresent()) {
			String text = snapshot.text(file).orElseThrow();
			spec = sound(snapshot.with(file, text.substring(0, head) + imported.get().replacement() + text.substring(head)), file);
		}
		PartType type = visible.from(spec).stream().filter(catalog -> part.catalog().equals(catalog.getName()))
				.flatMap(catalog -> catalog.getParts().stream()).filter(each -> part.part().identity().name().equals(each.getName())).findFirst()
				.orElseThrow(() -> new PartRefused("The catalog " + part.catalog() + " no longer has " + part.part().identity().name() + "."));
		try {
			TextEdit edit = new PartInsertion(new PartNames(visible)).insert(spec, offset >= head ? offset + shift : offset, type);
			List<TextChange> changes = new ArrayList<>(imported.stream().toList());
			changes.add(new TextChange(file, edit.offset() - shift, edit.length(), edit.replacement()));
			return changes;
		} catch (PartInsertion.Refused e) {
			throw new PartRefused(e.getMessage());
		}
	}

	private SpecFile sound(Snapshot snapshot, String file) throws PartRefused {
		SpecFile spec = reader.read(snapshot).files().get(file);
		if (spec == null || spec.eResource() instanceof XtextResource resource && resource.getParseResult().hasSyntaxErrors()) {
			throw new PartRefused("The text of " + file + " has to be understood before something can be put into it. Mend its slips first.");
		}
		return spec;
	}

	private static TextChange in(String file, TextEdit edit) {
		return new TextChange(file, edit.offset(), edit.length(), edit.replacement());
	}

	/** How a file imports the catalog of a part: relative to itself, or by the name of a built-in one. */
	private static String importPath(String file, OfferedPart part) {
		if (part.builtIn()) {
			return part.file();
		}
		Path folder = Path.of(file).getParent();
		Path target = Path.of(part.file());
		return (folder == null ? target : folder.relativize(target)).toString().replace('\\', '/');
	}

	/** The connectors of the part that a place in a file names; none if it names no part. */
	Set<Connector> connectorsAt(Snapshot snapshot, String file, int offset) {
		SpecFile spec = reader.read(snapshot).files().get(file);
		ILeafNode leaf = spec == null ? null : NodeModelUtils.findLeafNodeAtOffset(NodeModelUtils.findActualNodeFor(spec).getRootNode(), offset);
		for (EObject here = leaf == null ? null : NodeModelUtils.findActualSemanticObjectFor(leaf); here != null; here = here.eContainer()) {
			PartType type = here instanceof PartType declared ? declared : named(here);
			if (type != null && type.eContainer() instanceof Catalog catalog) {
				return PartsOfCatalog.of(catalog, new TextOrigins()).stream().map(PartsOfCatalog.Placed::part)
						.filter(part -> part.identity().name().equals(type.getName())).findFirst().map(PartsOnShelf::connectors).orElse(Set.of());
			}
		}
		return Set.of();
	}

	/** The part that an element of a series is made of, or null. */
	private static PartType named(EObject element) {
		for (EReference reference : element.eClass().getEAllReferences()) {
			if (!reference.isContainment() && !reference.isMany() && reference.getName().matches("type|cable") && element.eGet(reference) instanceof PartType type
					&& !type.eIsProxy()) {
				return type;
			}
		}
		return null;
	}

	/** Every connector of a part. */
	static Set<Connector> connectors(Part part) {
		Set<Connector> found = new HashSet<>();
		part.ends().first().ifPresent(found::add);
		part.ends().second().ifPresent(found::add);
		if (part instanceof Tee tee) {
			tee.ports().values().forEach(port -> port.ifPresent(found::add));
		}
		return found;
	}
}
