/**
 * The two engines that keep the diaries and the post, SQLite in a file and PostgreSQL by JDBC address, behind one
 * {@link bothy.diary.Store}; begin with {@link bothy.diary.sql.Shelf}. The migrations under {@code bothy/diary/sql/migrations} run on
 * both. Nothing outside this room sees JDBC, and every {@code SQLException} leaves it as a sentence.
 */
package bothy.diary.sql;
