package starchfilm.files.roomlog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.LoggedRoom;
import starchfilm.casting.LoggedRoom.RoomReading;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.TrialText;

/** Hygrometer logs as loggers and people write them. Every trial here is poured at 10:00. */
class RoomLogTest {
  private static final double ROUNDING = 1e-9;
  private static final String ISO =
      """
      time,air_C,rh_pct
      2026-04-02 10:00,12.5,63.25
      2026-04-02 11:00,13.5,61.75
      """;

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        ISO,
        "time;air_C;rh_pct\n2026-04-02 10:00;12,50;63,25\n2026-04-02 11:00;13,50;61,75\n",
        "time\tair_C\trh_pct\n2026-04-02 10:00\t12.5\t63.25\n2026-04-02 11:00\t13.5\t61.75\n",
        "time,air_C,rh_pct\n"
            + "2026-04-02 10:00,\"12,50\",\"63,25\"\n"
            + "2026-04-02 11:00,\"13,50\",\"61,75\"\n",
        "time,air_C,rh_pct\n2026-04-02 10:00,12,50,63,25\n2026-04-02 11:00,13,50,61,75\n",
        "# logger 7\n\n"
            + "No,Time,Temp(\u00B0C),Humidity(%),Dew point\n"
            + "1,2026-04-02T10:00:00,12.5,63.25,5\n"
            + "# moved\n"
            + "2,2026-04-02T11:00:00,13.5,61.75,6\n",
        "Datum;Uhrzeit;Temperatur;Feuchte\n"
            + "02.04.2026;10:00;12,5;63,25\n"
            + "02.04.2026;11:00;13,5;61,75\n",
        "02.04.26 10:00;12,5 \u00B0C;63,25 %\n02.04.26 11:00;13,5 \u00B0C;61,75 %\n",
        "2/4/2026 10:00,12.5,63.25\n2/4/2026 11:00,13.5,61.75\n13/4/2026 11:00,13.5,61.75\n",
        "4/2/2026 10:00 AM,12.5,63.25\n"
            + "4/2/2026 11:00 AM,13.5,61.75\n"
            + "4/13/2026 1:00 PM,13.5,61.75\n",
        "time,rh_pct,air_C\n2026-04-02 11:00,61.75,13.5\n2026-04-02 10:00,63.25,12.5\n",
        "time,air_C,rh_pct\r\n2026-04-02 10:00,12.5,63.25\r\n2026-04-02 10:30,--,NaN\r\n"
            + "2026-04-02 11:00,13.5,61.75\r\n",
        "time,air_C,rh_pct\n1775124000,12.5,63.25\n1775127600,13.5,61.75\n",
        "timestamp_ms,air_C,rh_pct\n1775124000000,12.5,63.25\n1775127600000,13.5,61.75\n",
        "hours,air_C,rh_pct\n0,12.5,63.25\n1,13.5,61.75\n",
        "Elapsed (min),Temp,RH\n0,12.5,63.25\n60,13.5,61.75\n",
        "time,air_F,rh_pct\n2026-04-02 10:00,54.5,63.25\n2026-04-02 11:00,56.3,61.75\n",
        "Time,Temp,RH\n"
            + "2026-04-02 10:00,54.5\u00B0F,63.25%\n"
            + "2026-04-02 11:00,56.3 \u00B0F,61.75 %\n",
        "Logger T-7\n"
            + "Serial,12345\n\n"
            + "Site: shed\n"
            + "Time,Temp (\u00B0C),RH\n"
            + "2026-04-02 10:00,12.5,63.25\n"
            + "2026-04-02 11:00,13.5,61.75\n",
        "1;02.04.2026 10:00;12,5;63,25\n2;02.04.2026 11:00;13,5;61,75\n",
        "Date;Heure;Temp\u00E9rature (\u00B0C);Humidit\u00E9 (%)\n"
            + "02/04/2026;10:00;12,5;63,25\n"
            + "02/04/2026;11:00;13,5;61,75\n"
            + "13/04/2026;11:00;13,5;61,75\n",
        "Fecha y hora;Temperatura;Humedad relativa\n"
            + "2026-04-02 10:00;12,5;63,25\n"
            + "2026-04-02 11:00;13,5;61,75\n",
        "Data;Ora;Temperatura;Umidit\u00E0\n"
            + "02.04.2026;10:00;12,5;63,25\n"
            + "02.04.2026;11:00;13,5;61,75\n",
        "Data/Hora;Temperatura;Umidade\n02.04.2026 10:00;12,5;63,25\n02.04.2026 11:00;13,5;61,75\n",
        "Zeitpunkt;T [\u00B0C];r.F. [%]\n"
            + "02.04.2026 10:00;12,5;63,25\n"
            + "02.04.2026 11:00;13,5;61,75\n",
        "time;air_C;rh_pct\n2 Apr 2026 10:00;12.5;63.25\n2 April 2026 11:00;13.5;61.75\n",
        "time;air_C;rh_pct\nApr 2, 2026 10:00 AM;12.5;63.25\nThu Apr 2, 2026 11:00 AM;13.5;61.75\n",
        "time;air_C;rh_pct\n02-Apr-26 10:00;12.5;63.25\n2. avril 2026 11:00;13.5;61.75\n",
      })
  void readsTheSameReadingsFromEveryShape(String csv) {
    LoggedRoom room = room(csv.getBytes(StandardCharsets.UTF_8));
    assertThat(room.readings().get(0).timeS()).isZero();
    assertThat(room.readings().get(1).timeS()).isEqualTo(3600);
    assertThat(room.at(0).temperatureK()).isCloseTo(285.65, within(ROUNDING));
    assertThat(room.at(0).relativeHumidity()).isCloseTo(0.6325, within(ROUNDING));
    assertThat(room.at(1800).temperatureK()).isCloseTo(286.15, within(ROUNDING));
    assertThat(room.at(1800).relativeHumidity()).isCloseTo(0.625, within(ROUNDING));
    assertThat(room.speedMPerS()).isEqualTo(0.1);
  }

  @Test
  void readsTheEncodingsLoggersWrite() {
    String csv =
        "time;Temperature \u00B0C;RH %\n2026-04-02 10:00;12,5;63,25\n2026-04-02 11:00;13;62\n";
    for (Charset charset :
        List.of(
            StandardCharsets.UTF_8,
            StandardCharsets.UTF_16,
            StandardCharsets.UTF_16LE,
            Charset.forName("windows-1252"))) {
      assertThat(room(csv.getBytes(charset)).readings()).as(charset.name()).hasSize(2);
    }
    assertThat(room(("\uFEFF" + csv).getBytes(StandardCharsets.UTF_8)).readings()).hasSize(2);
  }

  @Test
  void saysWhatWasOdd() {
    assertThat(
            notices(
                """
                time,air_C,rh_pct
                2026-04-02 12:00,12,100.4
                2026-04-02 13:00,12,60
                2026-04-02 11:30,12,60
                2026-04-02 13:00,14,62
                2026-04-03 08:00,-2.5,60
                2026-04-03 09:00,,60
                """))
        .containsExactly(
            "shed.csv: left out, because they hold no reading: 1 row",
            "shed.csv: the rows are not in order of time; they were sorted",
            "shed.csv: times given more than once take the mean of their readings: 1 repeated",
            "shed.csv, line 6: no reading for 19 h before 2026-04-03T08:00;"
                + " bridged by a straight line",
            "shed.csv, line 2: humidities above 100 % are read as 100 %",
            "shed.csv, line 6: temperatures below 1 \u00B0C are read as 1 \u00B0C;"
                + " the forecast does not cover ice",
            "shed.csv, line 4: the log begins 1.5 h after the pour; its first"
                + " reading is used for the time before");
  }

  @Test
  void saysWhichOfSeveralSensorsIsRead() {
    assertThat(
            notices(
                """
                time,kitchen C,kitchen RH,shed C,shed RH
                2026-04-02 10:00,20,50,10,80
                2026-04-02 11:00,20,50,10,80
                """))
        .containsExactly(
            "shed.csv, line 1: of several columns of temperature or humidity, \"kitchen C\" and"
                + " \"kitchen RH\" are read; for another sensor, put its columns first");
    assertThat(
            notices(
                """
                time,sensor,air_C,rh_pct
                2026-04-02 10:00,A,20,50
                2026-04-02 10:00,B,10,80
                2026-04-02 11:00,A,20,50
                2026-04-02 11:00,B,10,80
                """))
        .containsExactly(
            "shed.csv: times given more than once take the mean of their readings: 2 repeated; if"
                + " they are of several sensors, leave only the rows of the one beside the plate");
  }

  @Test
  void aLogOfEveryMinuteIsAveragedOverHours() {
    StringBuilder csv = new StringBuilder("time,air_C,rh_pct\n");
    for (int minute = 0; minute < 300; minute++) {
      csv.append(
          String.format(
              Locale.ROOT,
              "2026-04-02 %02d:%02d,%d,%d%n",
              10 + minute / 60,
              minute % 60,
              20 + minute % 2,
              50 - minute % 2));
    }
    assertThat(notices(csv.toString()))
        .containsExactly(
            "shed.csv: 300 readings are averaged over hours; faster changes hardly"
                + " affect when a film is dry");
    List<RoomReading> readings = room(csv.toString().getBytes(StandardCharsets.UTF_8)).readings();
    assertThat(readings).hasSize(5);
    assertThat(readings.get(3).temperatureK()).isCloseTo(20.5 + 273.15, within(ROUNDING));
    assertThat(readings.get(3).relativeHumidity()).isCloseTo(0.495, within(ROUNDING));
  }

  @Test
  void timesWithAnOffsetAreTheClockOnTheWall() {
    assertThat(notices("2026-04-02T10:00:00+02:00,12,60\n2026-04-02T11:00:00+02:00,12,60\n"))
        .containsExactly(
            "shed.csv: times carry an offset from UTC; they are read as the clock on the wall shows"
                + " them");
  }

  @Test
  void datesThatNothingTellsApart() {
    assertThat(faults("time,air_C,rh_pct\n03/04/2026 10:00,12,60\n03/04/2026 11:00,12,61\n"))
        .containsExactly(
            "shed.csv, line 2: \"03/04/2026 10:00\" given, allowed dates that say which number is"
                + " the day; no line of this log shows whether day or month comes first; write"
                + " dates like 2026-04-02 or 2.4.2026");
  }

  @Test
  void datesThatContradictEachOther() {
    assertThat(faults("time,air_C,rh_pct\n23/04/2026 10:00,12,60\n04/23/2026 11:00,12,61\n"))
        .containsExactly(
            "shed.csv, line 3: \"04/23/2026 11:00\" with the month first,"
                + " \"23/04/2026 10:00\" in line 2 with the day first given, allowed one"
                + " way of writing dates per file; write all dates like 2026-04-02");
  }

  @Test
  void rowsThatCannotBeReadings() {
    assertThat(
            faults(
                """
                time,air_C,rh_pct
                2026-04-02 10:00,12,60
                yesterday,12,60
                2026-04-02 11:00,120,60
                2026-04-02 12:00,12,106
                2026-04-02 13:00,warm,60
                2026-04-02 14:00,12
                """))
        .containsExactly(
            "shed.csv, line 3: \"yesterday\" given, allowed a date and time such as 2026-04-02"
                + " 18:30 or 2.4.2026 18:30; write the dates like one of these",
            "shed.csv, line 4: 120 given, allowed -30 to 90 \u00B0C; delete the"
                + " row if the sensor failed",
            "shed.csv, line 5: 106 given, allowed 0 to 105 % RH; delete the row if"
                + " the sensor failed",
            "shed.csv, line 6: \"warm\" given, allowed -30 to 90 \u00B0C; delete"
                + " the row if the sensor failed",
            "shed.csv, line 7: 2 cells given, allowed 3 cells as in the first row; put numbers with"
                + " a decimal comma in double quotes, or separate the cells by semicolons");
  }

  @Test
  void aLogFullOfNonsenseIsNotListedInFull() {
    String rows = "2026-04-02 10:00,hot,60\n".repeat(1000);
    List<String> faults = faults("time,air_C,rh_pct\n" + rows);
    assertThat(faults).hasSize(11);
    assertThat(faults.get(10))
        .isEqualTo(
            "shed.csv, line 1001: 990 more rows that cannot be read given, allowed"
                + " rows of time, \u00B0C and % RH; fix the rows above first");
  }

  @Test
  void columnsThatCannotBeTold() {
    assertThat(faults("when,how warm,how damp\n2026-04-02 10:00,12,60\n"))
        .containsExactly(
            "shed.csv, line 1: the columns when, how warm, how damp given, allowed one column each"
                + " for time, \u00B0C and % RH; name them time, air_C and rh_pct in the first row");
  }

  @Test
  void degreesFahrenheitThatNobodySays() {
    String warm = "2026-04-02 10:00,65.3,54\n2026-04-02 11:00,64.9,55\n";
    assertThat(faults("Time,Temperature,Humidity\n" + warm))
        .containsExactly(
            "shed.csv, line 3: a log whose coolest reading is 64.9 given, allowed degrees Celsius"
                + " of a room, or a column that says its unit; name the column air_F if it is"
                + " Fahrenheit, or air_C if it is that warm");
    assertThat(faults("time,air_C,rh_pct\n" + warm))
        .noneMatch(fault -> fault.contains("coolest reading"));
  }

  @Test
  void humidityBeforeTemperatureWithoutNamesIsAskedAbout() {
    assertThat(faults("2026-04-02 10:00,63,12.5\n2026-04-02 11:00,61,13.5\n"))
        .containsExactly(
            "shed.csv, line 1: columns without names that hold up to 63 and then"
                + " up to 13.5 given, allowed \u00B0C before % RH where no row names"
                + " them; if humidity comes first, write time,rh_pct,air_C as the first"
                + " row");
    assertThat(faults("2026-04-02 10:00,63%,12.5\n2026-04-02 11:00,61%,13.5\n"))
        .singleElement()
        .asString()
        .contains("63% and then 12.5");
  }

  @Test
  void oneBrokenRowIsPassedOverAndTold() {
    StringBuilder csv = new StringBuilder("time,air_C,rh_pct\n");
    for (int minute = 0; minute < 60; minute += 5) {
      csv.append(String.format(Locale.ROOT, "2026-04-02 10:%02d,12,60\n", minute));
    }
    csv.append("2026-04-02 11:0\n2026-04-02 11:05,12,60\n");

    assertThat(faults(csv.toString())).isEmpty();
    assertThat(notices(csv.toString()))
        .contains("shed.csv, line 14: skipped because it cannot be read: 1 cells");
  }

  @Test
  void tellsWhatItPassedOverAboveTheHeadAndHowTimesAreCounted() {
    assertThat(notices("Logger 7\nhours,air_C,rh_pct\n0,12,60\n1,12,61\n"))
        .contains(
            "shed.csv, line 1: 1 line above the readings skipped",
            "shed.csv: times are counted from the pour");
  }

  @Test
  void humidityAsAFraction() {
    assertThat(faults("time,air_C,rh_pct\n2026-04-02 10:00,12,0.62\n2026-04-02 11:00,12,0.6\n"))
        .containsExactly(
            "shed.csv, line 2: a log whose dampest reading is 0.62 % RH given, allowed relative"
                + " humidity in per cent; this looks like a fraction; multiply the column by 100");
  }

  @Test
  void aLogOfOtherDays() {
    assertThat(faults("time,air_C,rh_pct\n2026-03-02 10:00,12,60\n2026-03-02 11:00,12,60\n"))
        .containsExactly(
            "shed.csv: a log that ends at 2026-03-02T11:00 given, allowed readings after the pour"
                + " at 2026-04-02T10:00; name the log of these days, or check poured_at");
  }

  @Test
  void noLog() {
    Notebook notebook = TrialText.read(folder, trial());
    assertThat(TrialText.sentences(folder, notebook))
        .singleElement()
        .asString()
        .contains("a.json, line ")
        .endsWith(
            "room.log_csv: \"shed.csv\", a file that is not there given, allowed the log of a"
                + " hygrometer beside this file; check its name and folder");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "# nothing\n", "time,air_C,rh_pct\n", "\"", "a,b\n", "5\n"})
  void hardlyALog(String csv) {
    assertThat(faults(csv)).singleElement().asString().startsWith("shed.csv").contains("; ");
  }

  private LoggedRoom room(byte[] csv) {
    Notebook notebook = read(csv);
    assertThat(TrialText.sentences(folder, notebook)).isEmpty();
    return (LoggedRoom) notebook.trials().get(0).casting().room();
  }

  private List<String> faults(String csv) {
    return TrialText.sentences(folder, read(csv.getBytes(StandardCharsets.UTF_8)));
  }

  private List<String> notices(String csv) {
    Notebook notebook = read(csv.getBytes(StandardCharsets.UTF_8));
    assertThat(TrialText.sentences(folder, notebook)).isEmpty();
    return notebook.notices().stream()
        .map(notice -> notice.sentence().replace(folder.toString().replace('\\', '/') + "/", ""))
        .toList();
  }

  private Notebook read(byte[] csv) {
    try {
      Files.write(folder.resolve("shed.csv"), csv);
      return TrialText.read(folder, trial());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String trial() {
    return TrialText.with(
        "room", "{\"name\": \"shed\", \"log_csv\": \"shed.csv\", \"air_speed_m_per_s\": 0.1}");
  }
}
