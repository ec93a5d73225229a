package org.fieldfold.trace;

import java.util.AbstractMap;
import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;

/** A part of a base as it is, which notes what is read of it. What is not told apart counts as all of it. */
final class WatchedMap<V> extends AbstractMap<String, V> implements SortedMap<String, V> {
    private final SortedMap<String, V> records;
    private final String part;
    private final Trace trace;

    /** @param records that nobody can change */
    WatchedMap(SortedMap<String, V> records, String part, Trace trace) {
        this.records = records;
        this.part = part;
        this.trace = trace;
    }

    @Override
    public V get(Object id) {
        trace.record(part, (String) id);
        return records.get(id);
    }

    @Override
    public boolean containsKey(Object id) {
        trace.record(part, (String) id);
        return records.containsKey(id);
    }

    @Override
    public int size() {
        trace.names(part);
        return records.size();
    }

    @Override
    public boolean isEmpty() {
        trace.names(part);
        return records.isEmpty();
    }

    @Override
    public Set<String> keySet() {
        trace.names(part);
        return records.keySet();
    }

    @Override
    public String firstKey() {
        trace.names(part);
        return records.firstKey();
    }

    @Override
    public String lastKey() {
        trace.names(part);
        return records.lastKey();
    }

    @Override
    public Collection<V> values() {
        return all().values();
    }

    @Override
    public Set<Map.Entry<String, V>> entrySet() {
        return all().entrySet();
    }

    @Override
    public SortedMap<String, V> subMap(String from, String to) {
        return all().subMap(from, to);
    }

    @Override
    public SortedMap<String, V> headMap(String to) {
        return all().headMap(to);
    }

    @Override
    public SortedMap<String, V> tailMap(String from) {
        return all().tailMap(from);
    }

    @Override
    public Comparator<? super String> comparator() {
        return records.comparator();
    }

    private SortedMap<String, V> all() {
        trace.all(part);
        return records;
    }
}
