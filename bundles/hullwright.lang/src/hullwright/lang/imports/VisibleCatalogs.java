/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.imports;

import com.google.inject.Singleton;
import hullwright.spec.Catalog;
import hullwright.spec.SpecFile;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * The catalogs whose parts a place in a text may name: those of its own file and of the files it imports. Imports are not
 * passed on, so that a file says itself where its parts come from.
 */
@Singleton
public class VisibleCatalogs {

	/** The catalogs that are visible from an element, its own file's first. */
	public List<Catalog> from(EObject element) {
		SpecFile file = EcoreUtil2.getContainerOfType(element, SpecFile.class);
		if (file == null) {
			return List.of();
		}
		Set<SpecFile> files = new LinkedHashSet<>();
		files.add(file);
		files.addAll(Imports.of(file).values());
		List<Catalog> catalogs = new ArrayList<>();
		for (SpecFile each : files) {
			each.getDeclarations().stream().filter(Catalog.class::isInstance).map(Catalog.class::cast).forEach(catalogs::add);
		}
		return catalogs;
	}

	/** The visible catalogs that declare a part, a family or a message with this simple name. */
	public List<Catalog> declaring(EObject element, String name) {
		return from(element).stream()
				.filter(catalog -> catalog.getParts().stream().anyMatch(part -> name.equals(part.getName()))
						|| catalog.getFamilies().stream().anyMatch(family -> name.equals(family.getName()))
						|| catalog.getMessages().stream().anyMatch(message -> name.equals(message.getName())))
				.toList();
	}

	/** Whether the file of an element imports something that cannot be read or understood, so that names may be missing. */
	public boolean someImportFailed(EObject element) {
		SpecFile file = EcoreUtil2.getContainerOfType(element, SpecFile.class);
		return file != null && (Imports.of(file).size() < file.getImports().size() || isHeadNotUnderstood(file));
	}

	/** An import that is not understood leaves no trace in the spec, only an error before the first declaration. */
	private static boolean isHeadNotUnderstood(SpecFile file) {
		ICompositeNode whole = NodeModelUtils.findActualNodeFor(file);
		if (whole == null || file.getDeclarations().isEmpty()) {
			return false;
		}
		INode first = NodeModelUtils.findActualNodeFor(file.getDeclarations().get(0));
		for (INode part : whole.getChildren()) {
			if (first == null || part.getOffset() >= first.getOffset()) {
				return false;
			}
			for (INode node : part.getAsTreeIterable()) {
				if (node.getSyntaxErrorMessage() != null) {
					return true;
				}
			}
		}
		return false;
	}
}
