package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import com.helger.diagnostics.error.list.ErrorList;
import com.helger.ubl21.UBL21Marshaller;
import croftboard.paper.Contexts;
import croftboard.paper.PaperContext;
import croftboard.paper.file.OrderFiles;
import croftboard.paper.order.PurchaseOrder;
import java.math.BigDecimal;
import java.util.stream.Stream;
import oasis.names.specification.ubl.schema.xsd.order_21.OrderType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Orders against the OASIS schema UBL-Order-2.1.xsd (os-UBL-2.1, 4 November 2013) as the library ph-ubl21 10.2.0 carries it,
 * and against the sums that the standard's own example order 34 shows: line amount = quantity x price / base quantity; total
 * = lines - allowances + charges (docs.oasis-open.org/ubl/os-UBL-2.1/xml/UBL-Order-2.1-Example.xml).
 */
class UblOrderOutsideTest {
    static Stream<PurchaseOrder> everyOrder_fitsTheSchemaAndAddsUp() {
        PaperContext hostile = Contexts.hostile();
        return Stream.of(Contexts.sample(), Contexts.draft(Contexts.sample()), hostile)
                .flatMap(c -> PurchaseOrder.all(c).stream());
    }

    @ParameterizedTest
    @MethodSource
    void everyOrder_fitsTheSchemaAndAddsUp(PurchaseOrder order) {
        OrderType read = valid(OrderFiles.xml(order));
        BigDecimal lines = BigDecimal.ZERO;
        for (var line : read.getOrderLine()) {
            var item = line.getLineItem();
            BigDecimal each = item.getPrice().getPriceAmountValue().multiply(item.getQuantityValue())
                    .divide(item.getPrice().getBaseQuantityValue());
            assertThat(item.getLineExtensionAmountValue()).isEqualByComparingTo(each);
            assertThat(item.getQuantity().getUnitCode()).isEqualTo("C62");
            assertThat(item.getLineExtensionAmount().getCurrencyID()).isEqualTo("USD");
            lines = lines.add(each);
        }
        var total = read.getAnticipatedMonetaryTotal();
        assertThat(total.getLineExtensionAmountValue()).isEqualByComparingTo(lines)
                .isEqualByComparingTo(BigDecimal.valueOf(order.total(), 2));
        BigDecimal charges = read.getAllowanceCharge().stream().map(a -> a.getAmountValue())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(total.getPayableAmountValue()).isEqualByComparingTo(lines.add(charges))
                .isEqualByComparingTo(BigDecimal.valueOf(order.payable(), 2));
        assertThat(read.getIDValue()).isEqualTo(order.number());
        assertThat(read.getOrderLineCount()).isEqualTo(order.lines().size());
    }

    @Test
    void anOrderWithoutItsNumber_isRefusedBySchema() {
        PurchaseOrder order = PurchaseOrder.all(Contexts.sample()).get(0);
        String broken = OrderFiles.xml(order).replaceFirst("<cbc:ID>[^<]*</cbc:ID>", "");
        ErrorList errors = new ErrorList();
        UBL21Marshaller.order().setCollectErrors(errors).read(broken);
        assertThat(errors.containsAtLeastOneError()).isTrue();
    }

    private static OrderType valid(String xml) {
        ErrorList errors = new ErrorList();
        OrderType read = UBL21Marshaller.order().setCollectErrors(errors).read(xml);
        assertThat(errors.containsAtLeastOneError()).as(errors.toString()).isFalse();
        return read;
    }
}
