package measuredwalk.clinic.backup;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.springframework.jdbc.core.simple.JdbcClient;

/** The tables of the database, each behind those that it refers to. */
final class BackupTables {

	/** Flyway keeps its own table, and who holds a lease says nothing later. */
	private static final Set<String> NOT_COPIED = Set.of("flyway_schema_history", "lease");

	private final JdbcClient database;

	BackupTables(JdbcClient database) {
		this.database = database;
	}

	List<BackupTable> all() {
		Map<String, List<BackupTable.Column>> tables = new TreeMap<>();
		this.database.sql("""
				select c.table_name, c.column_name, c.data_type, c.is_identity from information_schema.columns c
				join information_schema.tables t on t.table_schema = c.table_schema and t.table_name = c.table_name
				where c.table_schema = current_schema and t.table_type = 'BASE TABLE'
				order by c.table_name, c.ordinal_position""").query((row) -> {
			String type = row.getString(3).toLowerCase(java.util.Locale.ROOT);
			tables.computeIfAbsent(row.getString(1), (table) -> new ArrayList<>())
				.add(new BackupTable.Column(row.getString(2), type, row.getString(4).equals("YES")));
		});
		tables.keySet().removeAll(NOT_COPIED);
		return inOrder(tables.keySet()).stream().map((name) -> new BackupTable(name, tables.get(name))).toList();
	}

	private Set<String> inOrder(Set<String> names) {
		Map<String, Set<String>> parents = parents();
		Set<String> ordered = new LinkedHashSet<>();
		names.forEach((name) -> add(name, parents, ordered));
		ordered.retainAll(names);
		return ordered;
	}

	private static void add(String name, Map<String, Set<String>> parents, Set<String> ordered) {
		for (String parent : parents.getOrDefault(name, Set.of())) {
			if (!parent.equals(name) && !ordered.contains(parent)) {
				add(parent, parents, ordered);
			}
		}
		ordered.add(name);
	}

	private Map<String, Set<String>> parents() {
		Map<String, Set<String>> parents = new TreeMap<>();
		this.database.sql("""
				select child.table_name, parent.table_name from information_schema.referential_constraints r
				join information_schema.table_constraints child
				on child.constraint_name = r.constraint_name and child.constraint_schema = r.constraint_schema
				join information_schema.table_constraints parent on parent.constraint_name = r.unique_constraint_name
				and parent.constraint_schema = r.unique_constraint_schema
				where r.constraint_schema = current_schema""").query((row) -> {
			parents.computeIfAbsent(row.getString(1), (child) -> new TreeSet<>()).add(row.getString(2));
		});
		return parents;
	}

}
