/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.lang.LanguageProblem;
import hullwright.lang.messages.NearestName;
import hullwright.network.Origin;
import hullwright.rules.Finding;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplaceText;
import hullwright.spec.Catalog;
import hullwright.spec.Import;
import hullwright.spec.Named;
import hullwright.spec.SpecFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Adds to a name that is not known which catalog has it, and to an import that leads nowhere what was perhaps meant. Only who sees the
 * whole project can tell.
 */
final class ImportFixes {

	private final Map<String, SpecFile> files;
	private final Supplier<Map<String, SpecFile>> builtIn;

	/**
	 * @param files the files of the project, by path
	 * @param builtIn the built-in catalogs by the name under which they are imported; asked for only where a name is not known
	 */
	ImportFixes(Map<String, SpecFile> files, Supplier<Map<String, SpecFile>> builtIn) {
		this.files = files;
		this.builtIn = builtIn;
	}

	/** The same problem, with what can be imported. */
	Finding with(Finding problem) {
		SpecFile file = files.get(problem.origin().file());
		if (file == null || NodeModelUtils.getNode(file) == null) {
			return problem;
		} else if (problem.rule().equals(LanguageProblem.IMPORT_NOT_FOUND)) {
			return importNotFound(problem, file);
		} else if (problem.rule().equals(LanguageProblem.UNKNOWN_NAME)) {
			return unknownName(problem, file);
		}
		return problem;
	}

	private Finding importNotFound(Finding problem, SpecFile file) {
		String written = textAt(problem.origin(), file);
		String bare = written.replace("\"", "");
		String last = bare.substring(bare.lastIndexOf('/') + 1);
		List<String> names = List.copyOf(importable(problem.origin().file()).keySet());
		Optional<String> meant = names.stream().filter(name -> name.endsWith("/" + last)).findFirst().or(() -> NearestName.to(bare, names.stream()));
		return meant.map(name -> extended(problem, "; did you mean '" + name + "'?",
				List.of(new Fix("Import '" + name + "' instead", Fix.Reach.DESIGN, List.of(new ReplaceText(problem.origin(), "\"" + name + "\"")))))).orElse(problem);
	}

	private Finding unknownName(Finding problem, SpecFile file) {
		String written = textAt(problem.origin(), file);
		List<String> imported = file.getImports().stream().map(Import::getImportURI).toList();
		List<String> homes = new ArrayList<>();
		importable(problem.origin().file()).forEach((name, candidate) -> {
			if (candidate != file && !imported.contains(name) && declares(candidate, written)) {
				homes.add(name);
			}
		});
		if (homes.isEmpty()) {
			return problem;
		}
		String hint = "; it is in '" + String.join("' and in '", homes) + "'";
		return extended(problem, hint, homes.stream().map(name -> importing(name, problem.origin().file(), file)).toList());
	}

	private static Finding extended(Finding problem, String hint, List<Fix> fixes) {
		List<Fix> all = new ArrayList<>(fixes);
		all.addAll(problem.fixes());
		return Finding.ofText(problem.rule(), problem.severity(), problem.origin(), problem.message() + hint, all);
	}

	/** What a file can import, by what it would write. */
	private Map<String, SpecFile> importable(String from) {
		Map<String, SpecFile> importable = new LinkedHashMap<>(builtIn.get());
		Path folder = Path.of(from).getParent();
		files.forEach((path, file) -> {
			if (!path.equals(from) && file.getDeclarations().stream().anyMatch(Catalog.class::isInstance)) {
				importable.put(folder == null ? path : folder.relativize(Path.of(path)).toString().replace('\\', '/'), file);
			}
		});
		return importable;
	}

	/** Whether a file has a catalog with an entry of this name, which may be written with that of the catalog before it. */
	private static boolean declares(SpecFile file, String name) {
		return file.getDeclarations().stream().filter(Catalog.class::isInstance).map(Catalog.class::cast)
				.anyMatch(catalog -> Stream.of(catalog.getParts(), catalog.getFamilies(), catalog.getMessages()).<Named>flatMap(List::stream)
						.anyMatch(entry -> name.equals(entry.getName()) || name.equals(catalog.getName() + "." + entry.getName())));
	}

	/** After the other imports, or before all else that is declared. */
	private static Fix importing(String name, String path, SpecFile file) {
		String statement = "import \"" + name + "\"";
		String lineEnd = node(file).getRootNode().getText().contains("\r\n") ? "\r\n" : "\n";
		List<Import> imports = file.getImports();
		int offset = imports.isEmpty() ? file.getDeclarations().stream().findFirst().map(ImportFixes::node).map(INode::getOffset).orElse(0)
				: node(imports.get(imports.size() - 1)).getEndOffset();
		return new Fix("Import '" + name + "'", Fix.Reach.DESIGN,
				List.of(new ReplaceText(new Origin(path, path, offset, 0, 1, 1), imports.isEmpty() ? statement + lineEnd + lineEnd : lineEnd + statement)));
	}

	private static INode node(EObject element) {
		return NodeModelUtils.getNode(element);
	}

	private static String textAt(Origin origin, SpecFile file) {
		String text = node(file).getRootNode().getText();
		int end = Math.min(text.length(), origin.offset() + origin.length());
		return text.substring(Math.min(origin.offset(), end), end);
	}
}
