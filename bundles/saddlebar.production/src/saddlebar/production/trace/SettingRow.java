package saddlebar.production.trace;

/**
 * One setting, then and now.
 *
 * @param subject what it is a setting of: {@code W01 matt}, {@code schedule trace}
 * @param setting its name
 * @param then    as the record of the day has it; empty if that says nothing
 * @param now     as it stands today; empty if there is none today
 * @param differs whether making it again today would come out otherwise
 */
public record SettingRow(String subject, String setting, String then, String now, boolean differs) {
}
