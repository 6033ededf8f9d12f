package bothy.almanac;

import java.util.AbstractMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Sheets of a folder that is known to be in order, each read when it is first wanted: most gardens want a few, and reading them all is
 * the longest part of a start.
 */
final class SheetsOnDemand extends AbstractMap<String, Sheet> {
    private final RulesFolder folder;
    private final Map<String, String> paths = new LinkedHashMap<>();
    private final Map<String, Sheet> read = new ConcurrentHashMap<>();

    SheetsOnDemand(RulesFolder folder) {
        this.folder = folder;
        for (String path : CropSheets.paths(folder)) {
            paths.put(path.substring(CropSheets.FOLDER.length(), path.length() - ".yaml".length()), path);
        }
    }

    @Override
    public boolean containsKey(Object crop) {
        return paths.containsKey(crop);
    }

    @Override
    public Sheet get(Object crop) {
        return crop instanceof String name && paths.containsKey(name)
                ? read.computeIfAbsent(name, wanted -> new SheetFile(YamlFile.in(folder, paths.get(wanted))).sheet())
                : null;
    }

    @Override
    public Set<String> keySet() {
        return Set.copyOf(paths.keySet());
    }

    @Override
    public Set<Entry<String, Sheet>> entrySet() {
        Map<String, Sheet> all = new LinkedHashMap<>();
        paths.keySet().forEach(crop -> all.put(crop, get(crop)));
        return all.entrySet();
    }
}
